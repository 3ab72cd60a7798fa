import QtQuick
import QtTest
import Mountwright.Controls
import Mountwright.Design
import Mountwright.Theme
import Mountwright.ViewModels

// The screen of a design: schedule, card, drawing, and what stands against it.
Item {
    id: root
    width: 1280
    height: 800

    DesignScreen {
        id: screen
        anchors.fill: parent
        design: demo.design
        watch: demo.watch
    }
    TestCase {
        name: "Design"
        when: windowShown

        function initTestCase() {
            verify(stage.beginDesign());
        }
        function init() {
            root.width = 1280;
            root.height = 800;
            if (demo.design.entering !== FormViewModel.Nothing)
                demo.design.leaveField();
            demo.design.look(DesignViewModel.Face);
            demo.design.chooseSection(0);
            wait(Touch.screenGuard);
        }
        // What is sought a moment after a change takes no finger's time.
        function press(item) {
            verify(item !== null);
            wait(200);
            mousePress(item, 20, 20);
            wait(Touch.shortestContact + 30);
            mouseRelease(item, 20, 20);
            wait(Touch.sameKeyLockout + 50);
        }
        function sectionCalled(name) {
            for (let section = 0; section < demo.design.sections.count; ++section) {
                demo.design.chooseSection(section);
                if (demo.design.sectionName === name)
                    return section;
            }
            return -1;
        }
        function test_theScheduleStandsInOneColumn() {
            let below = -1;
            for (let i = 0; i < demo.design.sections.count; ++i) {
                const row = findChild(screen, "section" + i);
                verify(row.visible);
                const place = row.mapToItem(root, 0, 0);
                verify(place.y > below);
                verify(place.y + row.height <= root.height);
                compare(Math.round(place.x), Math.round(findChild(screen, "section0").mapToItem(root, 0, 0).x));
                below = place.y + row.height;
            }
        }
        function test_aRowOpensItsSection() {
            const bands = sectionCalled("Bands");
            demo.design.chooseSection(0);
            press(findChild(screen, "section" + bands));
            compare(demo.design.sectionName, "Bands");
            verify(findChild(screen, "section" + bands).sunk);
        }
        // Where a small tablet has no room for all rows, the rest is a press away.
        function test_theRestIsAPressAway() {
            root.height = 520;
            const rest = findChild(screen, "theRest");
            tryVerify(() => rest.visible);
            const last = "section" + (demo.design.sections.count - 1);
            verify(!findChild(screen, last).visible);
            press(rest);
            tryVerify(() => findChild(screen, last).visible);
            press(findChild(screen, last));
            compare(demo.design.sectionName, "Techniques");
        }
        function test_allMeasuresAreOnePressAway() {
            const key = findChild(screen, "view" + DesignViewModel.Measures);
            press(key);
            compare(demo.design.view, DesignViewModel.Measures);
            verify(demo.design.measures.count > 40);
            verify(!findChild(screen, "piece").visible);
        }
        function test_theBenchKeyIsDottedWhileSomethingIsWrongAndAKeyMendsIt() {
            const bench = findChild(screen, "toBench");
            verify(bench.enabled);
            compare(demo.design.benchReason, "");
            sectionCalled("Window");
            for (let i = 0; i < demo.design.fields.count; ++i) {
                demo.design.chooseField(i);
                if (demo.design.fieldLabel === "Overlap, each side")
                    break;
            }
            for (const digit of [4, 0, 0])
                demo.design.digit(digit);
            demo.design.keep();
            demo.design.leaveField();
            verify(!bench.enabled && bench.visible);
            verify(demo.design.benchReason !== "");
            compare(demo.design.conflictPlace, "Window");
            const mend = findChild(screen, "mend");
            tryVerify(() => mend.visible);
            press(mend);
            compare(demo.design.conflictIsNotice || demo.design.conflictPlace === "", true);
            tryVerify(() => bench.enabled);
            demo.design.undo();
            demo.design.undo();
            verify(bench.enabled);
        }
        function test_whatIsWrongElsewhereLeadsThere() {
            sectionCalled("Window");
            for (let i = 0; i < demo.design.fields.count; ++i) {
                demo.design.chooseField(i);
                if (demo.design.fieldLabel === "Overlap, each side")
                    break;
            }
            for (const digit of [4, 0, 0])
                demo.design.digit(digit);
            demo.design.keep();
            demo.design.chooseSection(0);
            compare(demo.design.conflictPlace, "Window");
            verify(!demo.design.conflictIsHere);
            demo.design.goToConflict();
            compare(demo.design.sectionName, "Window");
            verify(demo.design.conflictIsHere);
            demo.design.leaveField();
            demo.design.undo();
        }
        function test_uprightTheCardLiesBeneathThePieceWithRoomForThePad() {
            root.width = 800;
            root.height = 1280;
            const piece = findChild(screen, "piece");
            const rail = findChild(screen, "rail");
            verify(piece.mapToItem(root, 0, 0).x >= rail.mapToItem(root, rail.width, 0).x);
            verify(piece.width > 450 && piece.height > 380);
            demo.design.chooseField(1);
            wait(200);
            for (const name of ["digit7", "digit0", "keepField"]) {
                const key = findChild(screen, name);
                verify(key.visible);
                const place = key.mapToItem(root, 0, 0);
                verify(place.y > piece.mapToItem(root, 0, piece.height).y);
                verify(place.y + key.height < findChild(screen, "toBench").mapToItem(root, 0, 0).y);
            }
            demo.design.leaveField();
        }
    }
}
