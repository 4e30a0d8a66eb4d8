package schema

import "flag"

var update = flag.Bool("update", false, "write what was found into the files that say what is expected")
