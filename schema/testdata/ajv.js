// Reads a JSON Schema (first line) and instances (one per further line) and prints "fits" or "does not fit" for each
// instance. The first argument is the directory that ajv is installed in.
const path = require("node:path");
const Ajv = require(path.join(process.argv[2], "ajv", "dist", "2020")).default;

const [schema, ...instances] = require("node:fs").readFileSync(0, "utf8").trimEnd().split("\n");
// strictRequired would refuse conditions that only ask whether a key is there; everything else is as strict as it gets.
const ajv = new Ajv({ strict: true, strictRequired: false, allowUnionTypes: true, validateSchema: true });
const validate = ajv.compile(JSON.parse(schema));
for (const instance of instances) {
  console.log(validate(JSON.parse(instance)) ? "fits" : "does not fit");
}
