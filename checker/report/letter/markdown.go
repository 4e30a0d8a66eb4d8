package letter

import "plumbrule/checker/report/markdown"

func plain(s string) string      { return markdown.Plain(s) }
func code(s string) string       { return markdown.Code(s) }
func title(s string) string      { return markdown.Title(s) }
func row(cells ...string) string { return markdown.Row(cells...) }
