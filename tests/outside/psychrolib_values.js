// Writes psychrolib_values.csv: node psychrolib_values.js > psychrolib_values.csv, with npm's psychrolib where node
// finds it. Only liquid water is asked for: below the triple point the library changes to ice.
const psychrolib = require('psychrolib');
const { version, license } = require('psychrolib/package.json');

const barometer = 101325;
psychrolib.SetUnitSystem(psychrolib.SI);

console.log(`# psychrolib ${version} (npm), ${license} licence, ${barometer} Pa; wet bulb found by it to 0.001 K`);
console.log('# saturation,celsius,pascal | wetbulb,celsius,percent,celsius');
for (let half = 1; half <= 100; ++half) {
  const celsius = half / 2;
  console.log(`saturation,${celsius},${psychrolib.GetSatVapPres(celsius).toPrecision(12)}`);
}
for (let celsius = 8; celsius <= 38; celsius += 2) {
  for (let percent = 20; percent <= 95; percent += 5) {
    const bulb = psychrolib.GetTWetBulbFromRelHum(celsius, percent / 100, barometer);
    if (bulb > 0.01) console.log(`wetbulb,${celsius},${percent},${bulb.toFixed(5)}`);
  }
}
