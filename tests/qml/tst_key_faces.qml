import QtQuick
import QtTest
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// How a key looks says whether it can be pressed, is pressed or cannot be used; its sign, how a board lies and the
// number before a sentence are drawn.
Item {
    id: root
    width: 900
    height: 500

    KeyFace {
        id: face
        x: 10
        y: 10
        width: 180
        height: 150
    }
    KeySign {
        id: sign
        x: 220
        y: 10
        width: 100
        height: 100
        sign: "back"
    }
    LieMark {
        id: lies
        x: 360
        y: 10
        height: 60
        back: false
    }
    NumberedLine {
        id: line
        x: 10
        y: 220
        width: 300
        number: 2
        text: "Cut both papers from the inner corner to the outer one, in one pull."
        textSize: 20
    }
    ArtworkName {
        id: name
        x: 10
        y: 400
        width: 400
        text: "Heron at low water"
    }
    TestCase {
        name: "KeyFaces"
        when: windowShown

        function init() {
            face.sunk = false;
            face.usable = true;
            face.pointed = false;
        }
        function pixel(x, y) {
            waitForRendering(root);
            const image = grabImage(root);
            return Qt.rgba(image.red(x, y) / 255, image.green(x, y) / 255, image.blue(x, y) / 255, 1);
        }
        // The number of pixels in an area that are darker than a middle grey.
        function inkIn(item) {
            waitForRendering(root);
            const image = grabImage(root);
            let ink = 0;
            for (let x = 0; x < item.width; ++x)
                for (let y = 0; y < item.height; ++y)
                    ink += image.red(item.x + x, item.y + y) < 128 ? 1 : 0;
            return ink;
        }
        function test_aRaisedKeyIsLitFromTheTopLeftAndASunkOneFromBelow() {
            const across = face.x + face.width / 2;
            const above = face.y + face.edge / 2;
            const below = face.y + face.height - face.edge / 2;
            verify(Qt.colorEqual(pixel(across, above), Theme.keyLit));
            verify(Qt.colorEqual(pixel(across, below), Theme.keyShade));
            face.sunk = true;
            verify(Qt.colorEqual(pixel(across, above), Theme.keyShade));
            verify(Qt.colorEqual(pixel(across, below), Theme.keyLit));
        }
        function test_aKeyThatCannotBeUsedHasNoFace() {
            face.usable = false;
            const middle = pixel(face.x + face.width / 2, face.y + face.height / 2);
            verify(!Qt.colorEqual(middle, Theme.card));
        }
        function test_theKeyboardsPlaceIsFramed() {
            const before = pixel(face.x - Metrics.mm(0.5), face.y + face.height / 2);
            face.pointed = true;
            const after = pixel(face.x - Metrics.mm(0.5), face.y + face.height / 2);
            verify(!Qt.colorEqual(before, after));
            verify(Qt.colorEqual(after, Theme.ink));
        }
        function test_everySignIsDrawnUnlikeTheOthers() {
            const inks = {};
            for (const one of Object.keys(sign.signs)) {
                sign.sign = one;
                const ink = inkIn(sign);
                verify(ink > 200, one);
                verify(inks[ink] === undefined || inks[ink] === "earlier" || inks[ink] === "redo" || inks[ink] === "undo" || inks[ink] === "next", one + " " + inks[ink]);
                inks[ink] = one;
            }
            sign.sign = "nothing of the kind";
            verify(!sign.visible);
            sign.sign = "back";
        }
        function test_theBackIsCrossedAndTheFaceHasItsOpening() {
            const face = inkIn(lies);
            lies.back = true;
            wait(50);
            const back = inkIn(lies);
            verify(face > 50 && back > 50);
            verify(face !== back);
            lies.back = false;
        }
        function test_aNumberStandsBesideItsSentenceWhichKeepsItsRoom() {
            verify(inkIn(line) > 300);
            verify(line.implicitHeight > 40);
        }
        function test_anArtworkHasLettersOfItsOwn() {
            compare(name.font.family, Metrics.artworkFamily);
            verify(name.font.italic);
        }
    }
}
