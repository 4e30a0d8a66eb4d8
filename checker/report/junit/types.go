package junit

import "encoding/xml"

type suites struct {
	XMLName xml.Name `xml:"testsuites"`
	Name    string   `xml:"name,attr"`
	totals
	Suites []suite `xml:"testsuite"`
}

type totals struct {
	Tests    int `xml:"tests,attr"`
	Failures int `xml:"failures,attr"`
	Errors   int `xml:"errors,attr"`
	Skipped  int `xml:"skipped,attr"`
}

func (t *totals) add(other totals) {
	t.Tests += other.Tests
	t.Failures += other.Failures
	t.Errors += other.Errors
	t.Skipped += other.Skipped
}

type suite struct {
	Name string `xml:"name,attr"`
	totals
	Properties *properties `xml:"properties"`
	Cases      []testCase  `xml:"testcase"`
	Out        string      `xml:"system-out"`
}

type properties struct {
	List []property `xml:"property"`
}

type property struct {
	Name  string `xml:"name,attr"`
	Value string `xml:"value,attr"`
}

// testCase has at most one of skipped, error and failure.
type testCase struct {
	ClassName string     `xml:"classname,attr"`
	Name      string     `xml:"name,attr"`
	Skipped   *skipped   `xml:"skipped"`
	Error     *complaint `xml:"error"`
	Failure   *complaint `xml:"failure"`
}

type skipped struct {
	Message string `xml:"message,attr"`
}

// complaint is an error or a failure; Text is what a reader unfolds.
type complaint struct {
	Message string `xml:"message,attr"`
	Type    string `xml:"type,attr"`
	Text    string `xml:",chardata"`
}
