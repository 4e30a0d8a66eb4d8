// Package wording says a text in the words of another country: where one says
// tread depth, another says going.
//
// It replaces whole words and nothing inside of them, keeps the plural and the
// capital at a beginning, and sets the article before. It knows no trade: the
// phrases come from whoever writes a rule set. A text that somebody typed into
// a design is not to be handed to it.
//
// Floor: the lowest, beside measure. It imports nothing of this module.
package wording
