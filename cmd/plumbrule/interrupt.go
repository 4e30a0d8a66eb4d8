package main

import (
	"context"
	"io"
)

// interruptible reads until the context is done. A read that waits for somebody
// to type would otherwise hold an interrupted program for as long as it waits.
type interruptible struct {
	ctx  context.Context
	from io.Reader
}

func (r interruptible) Read(into []byte) (int, error) {
	type answer struct {
		text []byte
		err  error
	}
	done := make(chan answer, 1) // so that a read that nobody waits for any more can end
	go func() {
		text := make([]byte, len(into))
		n, err := r.from.Read(text)
		done <- answer{text[:n], err}
	}()
	select {
	case a := <-done:
		return copy(into, a.text), a.err
	case <-r.ctx.Done():
		return 0, r.ctx.Err()
	}
}
