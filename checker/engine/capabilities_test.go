package engine_test

import (
	"strings"
	"testing"
)

// TestChecksReachNothing calls, from a check, everything in the language that
// looks at more than its arguments: it must not exist.
func TestChecksReachNothing(t *testing.T) {
	for function, call := range map[string]string{
		"http.send":          `http.send({"method": "get", "url": "http://localhost"}).status_code == 200`,
		"net.lookup_ip_addr": `count(net.lookup_ip_addr("localhost")) > 0`,
		"json.match_schema":  `json.match_schema({}, {"$ref": "http://localhost"})[0]`, // fetches the schema
		"json.verify_schema": `json.verify_schema({"$ref": "http://localhost"})[0]`,
		"time.now_ns":        `time.now_ns() > 0`,
		"time.format":        `time.format([0, "Local"]) != ""`, // the zone of the machine
		"crypto.x509.parse_and_verify_certificates": `crypto.x509.parse_and_verify_certificates("")[0]`, // at this time
		"io.jwt.decode_verify":                      `io.jwt.decode_verify("", {})[0]`,
		"rand.intn":                                 `rand.intn("a", 2) > 0`,
		"uuid.rfc4122":                              `uuid.rfc4122("a") != ""`,
		"opa.runtime":                               `opa.runtime().env.HOME != ""`,
		"providers.aws.sign_req":                    `providers.aws.sign_req({}, {}, 0) != {}`,
	} {
		t.Run(function, func(t *testing.T) {
			_, err := build(t, replace(openingFile, "not guard.opening", call), imperialSet)
			if err == nil || !strings.Contains(err.Error(), "undefined function "+function) {
				t.Errorf("%s gives %v", call, err)
			}
		})
	}
}
