package lib.areas_test

import data.lib.areas

_foot := 304800000

# 20 sq ft are 1 858 060.8 mm2, which a fact gives as 1 858 061; 40 sq ft are 3 716 121.6.
test_area_at_and_beside_a_break if {
	every case in [[0, 0], [1858060, 0], [1858061, 0], [1858062, 1], [3716122, 1]] {
		areas.column([20, 40], _foot, case[0]) == case[1]
	}
	not areas.column([20, 40], _foot, 3716123)
}

test_square_metres if {
	areas.column([2, 4], 1000000000, 2000000) == 0
	areas.column([2, 4], 1000000000, 2000001) == 1
}
