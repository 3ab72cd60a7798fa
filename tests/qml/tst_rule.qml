import QtQuick
import QtTest
import Mountwright.Components
import Mountwright.Theme

// The scale on which a measure is set.
Item {
    id: root
    width: 1100
    height: 300

    RuleScale {
        id: rule
        width: 1020
        ticks: {
            const all = [];
            for (let at = 300; at <= 332; at += 0.5)
                all.push({
                    "at": at,
                    "label": at % 1 === 0 ? String(at) : ""
                });
            return all;
        }
        bands: [
            {
                "from": 304,
                "to": 315.5,
                "word": "strips follow",
                "since": "",
                "until": "315.5",
                "drawn": false
            },
            {
                "from": 315.5,
                "to": 316.5,
                "word": "drawn",
                "since": "315.5",
                "until": "316.5",
                "drawn": true
            },
            {
                "from": 316.5,
                "to": 326,
                "word": "strips follow",
                "since": "316.5",
                "until": "326.0",
                "drawn": false
            },
            {
                "from": 326,
                "to": 332,
                "word": "cut anew",
                "since": "326.0",
                "until": "",
                "drawn": false
            }
        ]
        drawnAt: 316
        value: 316
        reading: 0.5
    }
    TestCase {
        name: "RuleScale"
        when: windowShown

        function init() {
            rule.value = 316;
            rule.touched = false;
        }
        // The words of all bands that are shown, in their order.
        function words() {
            return all(rule, "bandWord").filter(word => word.visible).map(word => word.text);
        }
        function bold() {
            return all(rule, "bandWord").filter(word => word.visible && word.font.bold).map(word => word.text);
        }
        function all(item, name) {
            let found = item.objectName === name ? [item] : [];
            for (let i = 0; i < item.children.length; ++i)
                found = found.concat(all(item.children[i], name));
            return found;
        }
        function test_thePlannedValueStandsInTheMiddle() {
            compare(Math.round(rule.place(316)), 510);
            compare(Math.round(rule.place(317) - rule.place(316)), Math.round(2 * rule.step));
        }
        function test_theMarkerIsAtTheValueAndTheRuleLiesStill() {
            const marker = findChild(rule, "marker");
            const from = rule.from;
            for (const value of [316, 317.5, 314]) {
                rule.value = value;
                fuzzyCompare(marker.x + marker.width / 2, rule.place(value), 0.01);
                compare(rule.from, from);
            }
        }
        function test_whereTheMarkerWouldLeaveTheNextPartIsLaidOut() {
            for (const value of [321, 326, 331.5, 309, 304.5]) {
                rule.value = value;
                const place = rule.place(value);
                verify(place > 0 && place < rule.width, value + " at " + place);
            }
        }
        function test_theWordOfTheValuesBandIsBold() {
            compare(bold(), ["drawn"]);
            rule.value = 317.5;
            compare(bold(), ["strips follow, to 326.0"]);
            rule.value = 328;
            compare(bold(), ["cut anew"]);
        }
        function test_anEndBeyondThePartShownIsSaid() {
            compare(words(), ["strips follow", "drawn", "strips follow, to 326.0"]);
        }
        function test_theMarkerIsHollowUntilTheValueIsTheMakers() {
            const marker = findChild(rule, "marker");
            verify(!marker.filled);
            compare(marker.ink, Theme.quiet);
            rule.touched = true;
            verify(marker.filled);
            compare(marker.ink, Theme.worked);
        }
    }
}
