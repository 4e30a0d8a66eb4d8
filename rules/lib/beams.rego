# METADATA
# description: How tables name a beam.
package lib.beams

# named is the bay of a beam with the size under which tables list it: plies
# and size, as 2-2x10, or the size alone of a solid stick, as 4x10. The size is
# left out where it hangs on plies that are not shown.
named(bay) := object.union(bay, {"size": {"value": _name(bay), "at": bay.size.at}}) if {
	_name(bay)
} else := object.remove(bay, ["size"])

_name(bay) := bay.size.value if _solid(bay)

_name(bay) := sprintf("%d-%s", [bay.plies.value, bay.size.value]) if not _solid(bay)

_solid(bay) if {
	not startswith(bay.size.value, "2x")
	not bay.plies
}

_solid(bay) if {
	not startswith(bay.size.value, "2x")
	bay.plies.value == 1
}
