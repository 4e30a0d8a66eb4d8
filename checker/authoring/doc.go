// Package authoring is for people who write rule sets: it starts one, tests
// one, and packs one for others to run.
//
// It trusts a set no more than a check of a design does: what the set brings
// runs in a process that can be stopped, and its files are read within limits.
// It judges no figure; whether one is right, its author says by its status.
//
// Floor: above the program's facade, whose designs and reports it uses to try
// fixtures; below the command.
package authoring
