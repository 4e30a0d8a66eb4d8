package engine

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
)

// question is what a process that runs the Rego of strangers is asked: one
// JSON document on its standard input.
type question struct {
	// Files are the Rego files that a set brings, by their name in the set.
	Files map[string]string `json:"files"`
	// Own are the ids of checks of the program whose figures those read.
	Own []string `json:"own"`
	// Checks are the ids of the checks to run.
	Checks []string `json:"checks"`
	// Figures and Facts are data.figures and input.
	Figures json.RawMessage `json:"figures,omitempty"`
	Facts   json.RawMessage `json:"facts,omitempty"`
	// Tests are Rego files with tests, by name. Where it is there, they are run
	// in place of the checks.
	Tests map[string]string `json:"tests"`
}

// answer is one line of what the process says.
type answer struct {
	// Check is the id of the check meant; empty where all are.
	Check string `json:"check,omitempty"`
	// Problem says why there is nothing else.
	Problem string           `json:"problem,omitempty"`
	Applies bool             `json:"applies,omitempty"`
	Rows    map[string][]any `json:"rows,omitempty"` // by rule
	// Examination is the answer where tests were to be run.
	Examination *Examination `json:"examination,omitempty"`
	// Done ends the answer; a process that was stopped does not come to say it.
	Done bool `json:"done,omitempty"`
}

func writeAnswer(out io.Writer, a answer) error {
	var line bytes.Buffer
	encoder := json.NewEncoder(&line) // one line, with its end
	encoder.SetEscapeHTML(false)
	if err := encoder.Encode(a); err != nil {
		return fmt.Errorf("writing an answer: %w", err)
	}
	_, err := out.Write(line.Bytes())
	return err
}

// readAnswers reads the lines of a process. The first that is not one line of
// an answer spoils what follows.
func readAnswers(lines [][]byte) (answers []answer, done bool, err error) {
	for _, line := range lines {
		if done {
			return nil, false, errors.New("its process went on after it was done")
		}
		decoder := json.NewDecoder(bytes.NewReader(line))
		decoder.UseNumber()
		decoder.DisallowUnknownFields()
		var a answer
		if err := decoder.Decode(&a); err != nil {
			return nil, false, fmt.Errorf("its process gave no answer that can be read: %w", err)
		}
		if a.Done {
			done = true
			continue
		}
		answers = append(answers, a)
	}
	return answers, done, nil
}
