# METADATA
# description: >-
#   How tables by area are read. They count areas in squares of a unit length,
#   facts in whole square millimetres.
package lib.areas

# square_millimetre in square nanometres.
square_millimetre := 1000000000000

# column is the place of the first break that covers an area. The area of a
# fact was rounded, so that one which rounds to a break is at it. It is undefined
# beyond the last break.
column(breaks, unit, area) := min([k |
	some k, squares in breaks
	((2 * area) - 1) * square_millimetre <= ((2 * squares) * unit) * unit
])
