package fieldsheet

import "plumbrule/checker/report/content"

// clean makes every text of the sheet fit to print: names come from the design,
// and a terminal must not obey them.
func (s *Sheet) clean() {
	each(&s.Title, &s.Revision, &s.File)
	for i := range s.Sections {
		section := &s.Sections[i]
		each(&section.Title)
		all(section.Notes)
		for k := range section.Tables {
			t := &section.Tables[k]
			each(&t.Title)
			all(t.Notes)
			for c := range t.Columns {
				each(&t.Columns[c].Head)
			}
			for _, row := range t.Rows {
				for c := range row {
					each(&row[c].Text)
				}
			}
		}
	}
	for i := range s.NotShown {
		each(&s.NotShown[i].What, &s.NotShown[i].Needs)
	}
}

func all(texts []string) {
	for i := range texts {
		each(&texts[i])
	}
}

func each(texts ...*string) {
	for _, t := range texts {
		*t = content.Printable(*t)
	}
}
