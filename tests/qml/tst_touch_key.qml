import QtQuick
import QtTest
import Mountwright.Controls
import Mountwright.Theme

// A key acts for a knuckle and for nothing else: not for a sleeve, not twice for one press, not for a press that was
// aimed at what stood there before.
Item {
    width: 400
    height: 300

    ActionArea {
        id: area
        anchors.fill: parent

        TouchKey {
            id: key
            x: 100
            y: 100
            width: 120
            height: 80
            offers: ScreenAction {
                id: action
                property int times: 0
                name: "press"
                text: "Press"
                onTriggered: times += 1
            }
        }
    }
    TestCase {
        name: "TouchKey"
        when: windowShown

        function init() {
            action.times = 0;
            action.enabled = true;
            action.repeats = false;
            wait(Touch.screenGuard + Touch.sameKeyLockout);
        }
        function press(milliseconds) {
            mousePress(key, 40, 40);
            wait(milliseconds);
            mouseRelease(key, 40, 40);
        }

        function test_actsWhenItIsLetGo() {
            mousePress(key, 40, 40);
            wait(Touch.shortestContact + 30);
            compare(action.times, 0);
            mouseRelease(key, 40, 40);
            compare(action.times, 1);
        }
        function test_aBrushIsNoPress() {
            mousePress(key, 40, 40);
            mouseRelease(key, 40, 40);
            compare(action.times, 0);
        }
        function test_letGoBesideItDoesNothing() {
            mousePress(key, 40, 40);
            wait(100);
            mouseMove(area, 10, 10);
            mouseRelease(area, 10, 10);
            compare(action.times, 0);
        }
        function test_theSameKeyIsDeafForAMoment() {
            press(90);
            press(90);
            compare(action.times, 1);
            wait(Touch.sameKeyLockout + 50);
            press(90);
            compare(action.times, 2);
        }
        function test_whatWasAimedAtAnEarlierScreenDoesNothing() {
            Touch.guard();
            press(90);
            compare(action.times, 0);
            wait(Touch.screenGuard + 50);
            press(90);
            compare(action.times, 1);
        }
        function test_heldDownItRepeatsOnlyWhereItIsToldTo() {
            press(Touch.holdBeforeRepeat + 3 * Touch.repeatEvery);
            compare(action.times, 1);
            action.times = 0;
            action.repeats = true;
            wait(Touch.sameKeyLockout + 50);
            press(Touch.holdBeforeRepeat + 3 * Touch.repeatEvery + 60);
            verify(action.times >= 3, action.times);
        }
        function test_whatIsNotOfferedIsNotThere() {
            action.enabled = false;
            verify(!key.visible);
            press(90);
            compare(action.times, 0);
        }
        function test_theKeyboardsOwnKeyWorksIt() {
            key.forceActiveFocus();
            keyPress(Qt.Key_Space);
            wait(90);
            keyRelease(Qt.Key_Space);
            compare(action.times, 1);
            key.focus = false;
        }
        // As an assistive program does it: without a finger.
        function test_anAssistiveProgramWorksIt() {
            key.clicked();
            compare(action.times, 1);
        }
        function test_itsActionIsOfferedByWhatItStandsOn() {
            compare(area.actions.length, 1);
            compare(area.actions[0], action);
            compare(key.objectName, "press");
        }
    }
}
