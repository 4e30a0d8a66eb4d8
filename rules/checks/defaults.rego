# METADATA
# title: Shapes of what checks read
# description: >
#   Binds the published schema of the facts to input, and the schema made from
#   the checks' own metadata to the figures, so that a misspelt field in any
#   check below is refused when it is loaded.
# scope: subpackages
# schemas:
#   - input: schema.facts
#   - data.figures: schema.figures
package checks
