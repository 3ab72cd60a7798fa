import QtQuick
import QtTest
import Mountwright.Controls
import Mountwright.Forms
import Mountwright.Theme
import Mountwright.ViewModels

// The fields of a design, entered one after the other, each in its place.
Item {
    id: root
    width: 700
    height: 700

    ActionArea {
        id: area
        anchors.fill: parent

        FieldList {
            id: list
            anchors.fill: parent
            form: demo.design
        }
    }
    TestCase {
        name: "Forms"
        when: windowShown

        function initTestCase() {
            verify(stage.beginDesign());
        }
        function init() {
            root.height = 700;
            if (demo.design.entering !== FormViewModel.Nothing)
                demo.design.leaveField();
            demo.design.chooseSection(0);
            wait(Touch.screenGuard);
        }
        function press(item) {
            verify(item !== null);
            wait(200);
            mousePress(item, 20, 20);
            wait(Touch.shortestContact + 30);
            mouseRelease(item, 20, 20);
            wait(Touch.sameKeyLockout + 50);
        }
        // Presses the first field, of any section, that is entered in that way.
        function open(kind) {
            for (let section = 0; section < demo.design.sections.count; ++section) {
                demo.design.chooseSection(section);
                for (let field = 0; field < demo.design.fields.count; ++field) {
                    demo.design.chooseField(field);
                    if (demo.design.entering === kind)
                        return true;
                    if (demo.design.entering !== FormViewModel.Nothing)
                        demo.design.leaveField();
                }
            }
            return false;
        }
        function offered(name) {
            for (let i = 0; i < area.actions.length; ++i)
                if (area.actions[i].name === name && area.actions[i].enabled)
                    return true;
            return false;
        }
        function test_aFieldOpensByItsKey() {
            verify(demo.design.fields.count > 2);
            verify(offered("field0"));
            press(findChild(list, "field0"));
            verify(demo.design.entering !== FormViewModel.Nothing);
            verify(offered("leaveField"));
            // The pad stands right beneath its field, and the row below further down.
            const key = findChild(list, "field0");
            const pad = findChild(list, "digit7");
            const gap = pad.mapToItem(root, 0, 0).y - key.mapToItem(root, 0, key.height).y;
            verify(gap > 0 && gap < Metrics.mm(5), gap);
            verify(findChild(list, "field1").mapToItem(root, 0, 0).y > pad.mapToItem(root, 0, 0).y);
            press(findChild(list, "leaveField"));
            compare(demo.design.entering, FormViewModel.Nothing);
        }
        function test_whatDoesNotFitIsAKeyAway() {
            root.height = 200;
            tryVerify(() => list.overflows);
            verify(offered("fieldsDown"));
            root.height = 700;
            demo.design.chooseSection(0);
        }
        function test_aLengthIsKeyedInAndKept() {
            verify(open(FormViewModel.Length));
            verify(list.editor.onPad);
            keyClick(Qt.Key_4);
            keyClick(Qt.Key_1);
            compare(demo.design.whole, "41");
            list.editor.stepBack();
            compare(demo.design.whole, "4");
            verify(offered("units"));
            const before = demo.design.inches;
            press(findChild(list, "units"));
            compare(demo.design.inches, !before);
            press(findChild(list, "units"));
        }
        // A length that is no value of the design: what it comes to is shown while it is keyed in.
        function test_whatAnOpeningComesToIsShownBeforeItIsEntered() {
            for (let section = 0; section < demo.design.sections.count; ++section) {
                demo.design.chooseSection(section);
                if (demo.design.sectionName === "Frame")
                    break;
            }
            demo.design.chooseField(0);
            verify(list.editor.onPad);
            const size = demo.design.fieldValue;
            const note = demo.design.fieldNote;
            for (const key of demo.design.inches ? [Qt.Key_1, Qt.Key_6] : [Qt.Key_4, Qt.Key_0, Qt.Key_0])
                keyClick(key);
            compare(demo.design.whole, demo.design.inches ? "16" : "400");
            verify(demo.design.fieldNote.indexOf("instead of") > 0, demo.design.fieldNote);
            press(findChild(list, "leaveField"));
            demo.design.chooseField(0);
            compare(demo.design.fieldValue, size);
            compare(demo.design.fieldNote, note);
        }
        function test_theFieldInHandIsLeftByPressingItAgain() {
            press(findChild(list, "field1"));
            compare(demo.design.fieldIndex, 1);
            press(findChild(list, "field1"));
            compare(demo.design.fieldIndex, -1);
            verify(!offered("leaveField"));
        }
        function test_whatIsKeyedInStandsInItsBox() {
            press(findChild(list, "field0"));
            const box = findChild(list, "field0");
            keyClick(Qt.Key_7);
            keyClick(Qt.Key_5);
            const shown = [];
            const collect = item => {
                if (item.text !== undefined && item.visible)
                    shown.push(String(item.text));
                for (let i = 0; i < item.children.length; ++i)
                    collect(item.children[i]);
            };
            collect(box);
            verify(shown.indexOf("75") >= 0, shown.join("|"));
            list.editor.stepBack();
            list.editor.stepBack();
            list.editor.stepBack();
            compare(demo.design.entering, FormViewModel.Nothing);
        }
        // A paper is written by its name, or taken from those that are shown.
        function test_aPaperIsTakenByHowItLooks() {
            for (let section = 0; section < demo.design.sections.count; ++section) {
                demo.design.chooseSection(section);
                if (demo.design.sectionName === "Bands")
                    break;
            }
            // The first row adds a band.
            demo.design.chooseField(1);
            compare(demo.design.entering, FormViewModel.Text);
            verify(demo.design.options.count > 5);
            let answer = null;
            tryVerify(() => (answer = findChild(list, "option1")) !== null && answer.visible);
            const name = answer.title;
            verify(answer.sample.drawn);
            press(answer);
            demo.design.chooseField(1);
            compare(demo.design.fieldValue, name);
            demo.design.leaveField();
            demo.design.undo();
        }
        function test_aTextIsWrittenAndKept() {
            verify(open(FormViewModel.Text));
            verify(list.editor.writes);
            const line = findChild(list, "line");
            tryVerify(() => line.writing);
            line.text = "Herring at the weir";
            press(findChild(list, "keepField"));
            verify(!line.writing || demo.design.entering === FormViewModel.Text);
        }
        function test_aChoiceIsMadeByItsKey() {
            verify(open(FormViewModel.Choice));
            verify(list.editor.chooses);
            verify(demo.design.options.count > 1);
            verify(!offered("keepField"));
            let chosen = null;
            tryVerify(() => (chosen = findChild(list, "option0")) !== null && chosen.visible);
            press(chosen);
            compare(demo.design.refusal, "");
        }
    }
}
