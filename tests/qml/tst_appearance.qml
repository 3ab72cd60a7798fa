import QtQuick
import QtTest
import Mountwright.Appearance
import Mountwright.Components
import Mountwright.Theme

// How a paper looks: its colour by a press or by the keyboard, its picture from a file, and how much of the sheet that shows.
Item {
    id: root
    width: 1280
    height: 800

    Loader {
        id: page
        anchors.fill: parent
        active: false
        sourceComponent: AppearanceScreen {
            watch: demo.watch
            appearance: demo.appearance
            camera: demo.camera
        }
    }
    SignalSpy {
        id: left
        signalName: "leave"
    }
    TestCase {
        name: "Appearance"
        when: windowShown

        function initTestCase() {
            verify(stage.openLook());
            page.active = true;
            left.target = page.item;
        }
        function init() {
            demo.appearance.makePlain();
            left.clear();
            wait(Touch.screenGuard);
        }
        function press(name) {
            const item = findChild(page.item, name);
            verify(item !== null && item.visible, name);
            mousePress(item, 20, 20);
            wait(Touch.shortestContact + 30);
            mouseRelease(item, 20, 20);
            wait(Touch.sameKeyLockout);
        }
        function write(name, text) {
            const entry = findChild(page.item, name);
            verify(entry !== null && entry.visible, name);
            mouseClick(entry, 20, 20);
            for (const letter of text)
                keyClick(letter);
            keyClick(Qt.Key_Return);
        }
        function choosePicture() {
            press("addPicture");
            press("picture0");
            tryCompare(demo.appearance, "busy", false);
            compare(demo.appearance.refusal, "");
        }

        function test_aSwatchIsPressedAndTakenBack() {
            press("swatch15");
            compare(demo.appearance.colour, "#3e4b85");
            compare(findChild(page.item, "swatch15").sunk, true);
            press("takeBack");
            compare(demo.appearance.colour, "");
        }
        function test_aColourIsWritten() {
            write("colour", "#A1b2c3");
            compare(demo.appearance.colour, "#a1b2c3");
            write("colour", "reddish");
            verify(demo.appearance.refusal !== "");
            compare(demo.appearance.colour, "#a1b2c3");
            compare(findChild(page.item, "colour").text, "reddish");
            findChild(page.item, "colour").text = "";
        }
        function test_aPictureFromAFileWithItsWidth() {
            const sample = findChild(page.item, "sample");
            const middle = sample.mapToItem(root, sample.width / 2, sample.height / 2);
            const before = grabImage(root).pixel(middle.x, middle.y);
            choosePicture();
            compare(demo.appearance.lacksAcross, true);
            verify(findChild(page.item, "across").visible);
            write("across", "72");
            compare(demo.appearance.lacksAcross, false);
            // In the middle of the print stands a flower, ochre.
            tryVerify(() => Qt.colorEqual(grabImage(root).pixel(middle.x, middle.y), "#d9a441"));
            verify(!Qt.colorEqual(before, "#d9a441"));
            press("wholeSheet");
            verify(demo.appearance.across.startsWith("700"));
            press("removePicture");
            compare(demo.appearance.picture, "");
        }
        function test_backLeavesTheFilesFirst() {
            press("addPicture");
            page.item.back();
            compare(page.item.choosesPicture, false);
            compare(left.count, 0);
            press("toMaterials");
            compare(left.count, 1);
        }
    }
}
