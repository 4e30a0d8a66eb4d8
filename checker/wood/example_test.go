package wood_test

import (
	"fmt"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

func ExampleJoist_MaxSpan() {
	size, _ := measure.ParseNominal("2x10")
	live, _, _ := measure.ParsePressure("40 psf")
	dead, _, _ := measure.ParsePressure("10 psf")
	joist := wood.Joist{
		Lumber:  wood.Lumber{Species: wood.SouthernPine, Grade: wood.No2, Size: size, Wet: true},
		Spacing: 16 * measure.Inch,
		Load:    wood.Load{Dead: dead, Imposed: live},
		Limits:  wood.Limits{Imposed: 360},
	}
	span, err := joist.MaxSpan(wood.Strict())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(span.Length.Sixteenths(), "by", span.Governs)
	for _, s := range span.Report.Steps {
		if s.Name == "w" || s.Name == "Fb′" || s.Name == "L_b" {
			fmt.Println(s)
		}
	}
	// Output:
	// 14'-0 5/16" by bending
	// w = w_D + w_Q = 66.6667 plf
	// Fb′ = Fb · CD · CF · CM_Fb · Ct_Fb · Ci_Fb · Cr · CL · Cfu = 920 psi
	// L_b = √(8 · Fb′ · S / (w / 12)) = 168.34 in (14'-0 5/16")
}

func ExampleTributary() {
	builders, statics, err := wood.Tributary(11*measure.Foot, 30*measure.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(builders.Sixteenths(), statics.Sixteenths())
	// Output: 8'-0" 8'-3 7/16"
}
