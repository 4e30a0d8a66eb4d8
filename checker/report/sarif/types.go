package sarif

// The parts of the format that this package writes, under the names of the
// standard (OASIS SARIF 2.1.0, section 3).

type log struct {
	Schema  string `json:"$schema"`
	Version string `json:"version"`
	Runs    []run  `json:"runs"`
}

type run struct {
	Tool              tool                    `json:"tool"`
	AutomationDetails automationDetails       `json:"automationDetails"`
	Invocations       []invocation            `json:"invocations"`
	URIBases          map[string]artifactBase `json:"originalUriBaseIds"`
	Artifacts         []artifact              `json:"artifacts"`
	ColumnKind        string                  `json:"columnKind"`
	Results           []sarifResult           `json:"results"`
	Properties        runProperties           `json:"properties"`
}

type tool struct {
	Driver driver `json:"driver"`
}

type driver struct {
	Name          string       `json:"name"`
	Rules         []descriptor `json:"rules"`
	Notifications []descriptor `json:"notifications"`
}

type descriptor struct {
	ID          string          `json:"id"`
	Short       *text           `json:"shortDescription,omitempty"`
	Full        *text           `json:"fullDescription,omitempty"`
	Help        *help           `json:"help,omitempty"`
	Default     *configuration  `json:"defaultConfiguration,omitempty"`
	Properties  *ruleProperties `json:"properties,omitempty"`
	consequence string
}

type configuration struct {
	Level string `json:"level"`
}

type ruleProperties struct {
	Tags []string `json:"tags"`
}

type text struct {
	Text string `json:"text"`
}

type help struct {
	Text     string `json:"text"`
	Markdown string `json:"markdown"`
}

type automationDetails struct {
	ID string `json:"id"`
}

type invocation struct {
	Successful    bool           `json:"executionSuccessful"`
	Notifications []notification `json:"toolExecutionNotifications,omitempty"`
}

type notification struct {
	Descriptor     reference  `json:"descriptor"`
	AssociatedRule *reference `json:"associatedRule,omitempty"`
	Level          string     `json:"level"`
	Message        text       `json:"message"`
	Locations      []location `json:"locations,omitempty"`
}

type reference struct {
	ID    string `json:"id"`
	Index int    `json:"index"`
}

type artifactBase struct {
	Description text `json:"description"`
}

type artifact struct {
	Location artifactLocation `json:"location"`
}

type sarifResult struct {
	RuleID              string            `json:"ruleId"`
	RuleIndex           int               `json:"ruleIndex"`
	Level               string            `json:"level"`
	Message             text              `json:"message"`
	Locations           []location        `json:"locations"`
	RelatedLocations    []location        `json:"relatedLocations,omitempty"`
	PartialFingerprints map[string]string `json:"partialFingerprints,omitempty"`
	Suppressions        []suppression     `json:"suppressions,omitempty"`
	Fixes               []fix             `json:"fixes,omitempty"`
	Properties          *resultProperties `json:"properties,omitempty"`
}

type suppression struct {
	Kind          string `json:"kind"`
	Status        string `json:"status"`
	Justification string `json:"justification,omitempty"`
}

// fix is a remedy in the form in which services offer it at the line.
type fix struct {
	Description text             `json:"description"`
	Changes     []artifactChange `json:"artifactChanges"`
}

type artifactChange struct {
	Artifact     artifactLocation `json:"artifactLocation"`
	Replacements []replacement    `json:"replacements"`
}

// replacement takes a region out, which may be empty, and puts a text there.
type replacement struct {
	Deleted  region `json:"deletedRegion"`
	Inserted text   `json:"insertedContent"`
}

type location struct {
	ID       int              `json:"id,omitempty"`
	Physical physicalLocation `json:"physicalLocation"`
	Logical  []logical        `json:"logicalLocations,omitempty"`
	Message  *text            `json:"message,omitempty"`
}

type physicalLocation struct {
	Artifact artifactLocation `json:"artifactLocation"`
	Region   region           `json:"region"`
}

type artifactLocation struct {
	URI   string `json:"uri"`
	Base  string `json:"uriBaseId"`
	Index int    `json:"index"`
}

type region struct {
	StartLine   int `json:"startLine"`
	StartColumn int `json:"startColumn"`
	EndLine     int `json:"endLine,omitempty"`
	EndColumn   int `json:"endColumn,omitempty"`
}

// logical names the value by its pointer, and the element by its mark.
type logical struct {
	Name          string `json:"name,omitempty"`
	QualifiedName string `json:"fullyQualifiedName"`
}
