package measure_test

import (
	"fmt"

	"plumbrule/checker/measure"
)

func ExampleParseLength() {
	typed, system, err := measure.ParseLength(`12'-6 3/8"`)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(int64(typed), system, typed.Text(measure.Imperial), typed.Text(measure.Metric))

	_, _, err = measure.ParseLength(`12' 14"`)
	fmt.Println(err)
	// Output:
	// 3819525000 imperial 12'-6 3/8" 3819.525 mm
	// length `12' 14"`: twelve inches or more behind the feet; write 13'-2"
}

func ExampleDistinct() {
	have, limit := measure.Distinct(31*measure.Inch/4+1000, 31*measure.Inch/4, measure.Imperial)
	fmt.Println(have, "against", limit)
	// Output: 7.75004" against 7.75"
}
