import QtQuick
import QtTest
import Mountwright.Bench
import Mountwright.Components
import Mountwright.Theme

// What waits is shown by: the shelf's rows and hours, the outline, the screen of the waits, the alert's bar.
Item {
    id: root
    width: 1280
    height: 800

    ShelfView {
        id: shelf
        width: 830
        height: 177
        shelf: demo.shelf
    }
    WaitPane {
        id: pane
        y: 180
        width: 1055
        height: 412
        bench: demo.bench
        shelf: demo.shelf
    }
    AlertBar {
        id: bar
        y: 600
        width: 1230
        height: implicitHeight
        alert: demo.alert
    }
    WaitOutline {
        id: outline
        x: 900
        width: 300
        height: 100
        hour: 100
    }
    TestCase {
        name: "Times"
        when: windowShown

        function within(item, parent) {
            const place = item.mapToItem(parent, 0, 0);
            return place.x >= -1 && place.y >= -1 && place.x + item.width <= parent.width + 1 && place.y + item.height <= parent.height + 1;
        }
        function shownTexts(item) {
            let texts = [];
            for (let i = 0; i < item.children.length; ++i) {
                const child = item.children[i];
                if (!child.visible)
                    continue;
                if (child.text !== undefined && child.text !== "")
                    texts.push(child);
                texts = texts.concat(shownTexts(child));
            }
            return texts;
        }
        function test_1_withoutAnAlertThereIsNoBar() {
            compare(demo.alert.gone, "");
            verify(!bar.visible);
        }
        function test_2_theShelfNamesTheHoursAndTheFirstTest() {
            const nothing = findChild(shelf, "nothing");
            compare(nothing.text, qsTr("Nothing is drying."));
            verify(stage.workUntilSomethingDries());
            tryVerify(() => !nothing.visible);
            const texts = shownTexts(shelf).map(one => one.text);
            verify(texts.some(one => /^(test|tack|open to|may close|\d+ min)/.test(one)), texts.join("; "));
            verify(texts.filter(one => /^\d{1,2}:00$/.test(one)).length >= 2, texts.join("; "));
            verify(!texts.some(one => /sure/.test(one)));
        }
        function test_3_nothingOnTheShelfStandsOverAnotherOrOutsideIt() {
            const texts = shownTexts(shelf);
            for (let i = 0; i < texts.length; ++i) {
                verify(within(texts[i], shelf), texts[i].text);
                for (let j = i + 1; j < texts.length; ++j) {
                    const a = texts[i].mapToItem(shelf, 0, 0);
                    const b = texts[j].mapToItem(shelf, 0, 0);
                    const across = Math.min(a.x + texts[i].width, b.x + texts[j].width) - Math.max(a.x, b.x);
                    const down = Math.min(a.y + texts[i].height, b.y + texts[j].height) - Math.max(a.y, b.y);
                    verify(across <= 1 || down <= 8, texts[i].text + " / " + texts[j].text);
                }
            }
        }
        function test_4_silentAlertsAreToldUnderTheWords() {
            const silent = findChild(shelf, "silent");
            compare(silent.visible, demo.shelf.silent);
        }
        function test_5_whatHasNoRowIsCounted() {
            shelf.height = Metrics.mm(15);
            compare(shelf.rowsShown, 1);
            compare(shelf.hidden, Math.max(0, demo.shelf.count - 1));
            shelf.height = 177;
            compare(shelf.rowsShown, 3);
        }
        function test_6_thePaneOfTheWaitsFillsItsRoom() {
            verify(pane.fits);
            verify(pane.rowsShown >= 3);
            // Each row says its verb once, before its outline or, where there is no room, beside its name.
            compare(shownTexts(pane).filter(one => one.objectName === "brief").length, Math.min(pane.rowsShown, demo.shelf.count));
            for (const one of shownTexts(pane))
                verify(within(one, pane), one.text);
        }
        function colourAt(x, y) {
            const image = grabImage(outline);
            return [image.red(x, y), image.green(x, y), image.blue(x, y)].join();
        }
        function test_7_anOutlineIsTintedUntilTouchedAndSolidThen() {
            outline.points = [Qt.point(0, 1), Qt.point(3, 1)];
            const said = colour => [Math.round(colour.r * 255), Math.round(colour.g * 255), Math.round(colour.b * 255)].join();
            tryVerify(() => colourAt(150, 80) === said(Theme.calmTint));
            outline.window = true;
            tryVerify(() => colourAt(150, 80) === said(Theme.workedTint));
            outline.solid = true;
            tryVerify(() => colourAt(150, 80) === said(Theme.worked));
            outline.window = false;
            tryVerify(() => colourAt(150, 80) === said(Theme.calm));
        }
        function test_8_anOutlineStandsAsHighAsItsShare() {
            outline.solid = true;
            outline.points = [Qt.point(1, 0), Qt.point(1, 0.5), Qt.point(3, 0.5)];
            const calm = [Theme.calm].map(one => [Math.round(one.r * 255), Math.round(one.g * 255), Math.round(one.b * 255)].join())[0];
            tryVerify(() => colourAt(200, 70) === calm);
            verify(colourAt(200, 30) !== calm);
            verify(colourAt(50, 70) !== calm);
        }
        function test_9_theBarHasATickForEachMinuteAndItsTwoTimes() {
            verify(stage.workUntilAWindowCalls());
            tryVerify(() => bar.visible);
            verify(/^likely gone \d{1,2}:\d\d$/.test(findChild(bar, "gone").text), findChild(bar, "gone").text);
            const closes = findChild(bar, "closes");
            compare(closes.visible, demo.alert.closeMinutes > 0);
            verify(demo.alert.closeMinutes < demo.alert.barMinutes);
            let ticks = 0;
            const count = item => {
                for (let i = 0; i < item.children.length; ++i) {
                    const child = item.children[i];
                    ticks += child.objectName === "tick" ? 1 : 0;
                    count(child);
                }
            };
            count(bar);
            compare(ticks, Math.max(0, Math.ceil(demo.alert.barMinutes / bar.every) - 1));
            verify(bar.every * bar.minute >= Metrics.mm(3) || bar.every === 60);
        }
    }
}
