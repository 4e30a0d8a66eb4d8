package text

// CellsOf lets tests measure as the package does.
var CellsOf = newCells
