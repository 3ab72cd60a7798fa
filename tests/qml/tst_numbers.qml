import QtQuick
import QtTest
import Mountwright.Components
import Mountwright.Theme

// Numbers, keyed in and shown.
Item {
    id: root
    width: 900
    height: 700
    property var heard: []

    NumberPad {
        id: pad
        onDigit: number => root.heard.push(number)
        onPart: root.heard.push("part")
        onErased: root.heard.push("erased")
    }
    StackedNumber {
        id: number
        x: 600
        whole: "12"
        unit: "in"
    }
    StepNumber {
        id: figure
        x: 600
        y: 300
        figure: demo.bench.figure
    }
    TestCase {
        name: "Numbers"
        when: windowShown

        function init() {
            root.heard = [];
            pad.visible = true;
            pad.inches = false;
            wait(Touch.padLockout);
        }
        function press(name) {
            const key = findChild(pad, name);
            verify(key !== null, name);
            mousePress(key, 20, 20);
            wait(Touch.shortestContact + 30);
            mouseRelease(key, 20, 20);
        }
        function test_everyKeySaysItsOwn() {
            for (let digit = 0; digit < 10; ++digit)
                press("digit" + digit);
            press("part");
            press("erase");
            compare(root.heard, [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, "part", "erased"]);
        }
        function test_theKeyboardSaysTheSame() {
            for (const key of [Qt.Key_0, Qt.Key_7, Qt.Key_Period, Qt.Key_Comma, Qt.Key_Slash])
                keyClick(key);
            compare(root.heard, [0, 7, "part", "part", "part"]);
        }
        function test_aPadThatIsNotThereHearsNothing() {
            pad.visible = false;
            keyClick(Qt.Key_7);
            keyClick(Qt.Key_Period);
            compare(root.heard, []);
        }
        function test_theMarkIsTheUnits() {
            compare(findChild(pad, "part").legend, ".");
            pad.inches = true;
            compare(findChild(pad, "part").legend, "⁄");
        }
        function test_aFractionIsStackedWhereThereIsOne() {
            verify(!number.fraction);
            const plain = number.width;
            number.numerator = "3";
            number.denominator = "8";
            verify(number.fraction);
            tryVerify(() => number.width > plain);
            number.unitBeside = false;
            tryVerify(() => number.width < plain + number.wholeSize);
        }
        function test_aStepsFigureIsShownWhole() {
            verify(demo.bench.figure.present);
            compare(figure.whole, demo.bench.figure.sign + demo.bench.figure.whole);
            compare(figure.unit, demo.bench.figure.unit);
        }
    }
}
