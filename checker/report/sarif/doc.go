// Package sarif writes a report as SARIF 2.1.0, for code scanning services and
// editors.
//
// What readers of the format were made to show decides some choices:
//
//   - Something not shown is a result of kind "fail" with level warning. The
//     standard's kind "open" would fit its meaning, but asks for level none,
//     which services hide or list last, and what is not shown comes first here.
//   - An excused result carries its suppression and the level note, as a
//     service that does not heed suppressions would otherwise fail on it.
//   - A design that cannot be read is a notification of the run, as the standard
//     wants it, and a result as well: without one a service takes all earlier
//     findings for mended. A check that could not run is a notification only.
//   - Results within their limits are left out, for a service would list each as
//     an alert. The counts of all outcomes are in the properties of the run.
//   - The fingerprint stands under two names: ours, and the one that a service
//     would else fill with a hash of the line.
//
// Columns count code points, and the run says so. File names are written as
// relative references, percent-encoded; of an absolute one only the last part is
// left, so that no output tells of the machine it was made on.
//
// Floor: above package content, below package report.
package sarif
