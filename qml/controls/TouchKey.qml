import QtQuick
import QtQuick.Templates as T
import Mountwright.Theme

// A key for knuckles that triggers an action: acts on release inside, ignores a press that is too short, too soon or
// aimed at an earlier screen. The template handles focus, keyboard and assistive programs.
T.AbstractButton {
    id: root

    // This is not the template's `action`, which would be triggered past the guards.
    required property ScreenAction offers
    // The text on the key; "" where its face is drawn.
    property string legend: offers.text
    property string hint: offers.hint
    readonly property bool filled: offers.filled && enabled
    readonly property bool sunk: down || offers.chosen
    // A key that only shows something, and opens nothing, has no frame.
    property bool framed: true
    // The key is shown as a dotted outline where its action is not offered, in place of leaving a gap.
    property bool stays: false
    property color ink: Theme.ink
    property color ground: Theme.card
    readonly property color words: !enabled ? Theme.quiet : filled ? ground : ink
    property color hintInk: words
    // The mitred edge, and the face while it is sunk.
    property color lit: filled ? Theme.darkLit : Theme.keyLit
    property color shade: filled ? Theme.darkShade : Theme.keyShade
    property color line: filled ? Theme.darkShade : Theme.keyLine
    property color downFace: filled ? Theme.darkDown : Theme.keyDown
    property int legendSize: Metrics.text
    property int hintSize: Metrics.label
    // Between the words and either side.
    property double margin: Math.min(Metrics.mm(1.5), width * 0.05)
    // The key ignores presses for so many milliseconds after one.
    property int lockout: Touch.sameKeyLockout
    readonly property bool isKey: true

    objectName: offers.name
    text: offers.called
    visible: offers.enabled || stays
    enabled: offers.enabled
    focusPolicy: Qt.TabFocus
    implicitWidth: Metrics.key
    implicitHeight: Metrics.key
    padding: 0

    // The screen that contains the key offers its action.
    Component.onCompleted: {
        for (let at = parent; at !== null; at = at.parent) {
            const area = at as ActionArea;
            if (area !== null) {
                area.offer(offers);
                return;
            }
        }
    }
    onPressed: held.begin()
    onReleased: held.stop()
    onCanceled: {
        held.stop();
        held.finger = false;
    }
    // Without a finger or a keyboard key down, an assistive program pressed.
    onClicked: {
        if (!held.finger || held.counts && !held.stepped && !contact.running)
            held.act();
        held.finger = false;
    }

    background: KeyFace {
        visible: root.framed || root.down || root.visualFocus
        sunk: root.sunk
        usable: root.enabled
        pointed: root.visualFocus
        face: root.sunk ? root.downFace : root.filled ? root.ink : root.ground
        lit: root.lit
        shade: root.shade
        line: root.line
        frame: root.ink
    }
    contentItem: Item {
        Column {
            anchors.centerIn: parent
            // What is pressed gives way under the finger.
            anchors.verticalCenterOffset: root.sunk ? Metrics.mm(0.4) : 0
            width: parent.width - 2 * root.margin
            spacing: root.offers.sign !== "" ? Metrics.mm(1) : 0

            KeySign {
                anchors.horizontalCenter: parent.horizontalCenter
                sign: root.offers.sign
                ink: root.words
                width: height
                height: Math.min(Metrics.mm(11), root.height * 0.4)
            }
            Text {
                width: parent.width
                visible: root.legend !== ""
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.Wrap
                text: root.legend
                color: root.words
                font.family: Metrics.family
                font.pixelSize: root.legendSize
                font.bold: true
                lineHeight: 0.9
            }
            Text {
                width: parent.width
                visible: root.hint !== ""
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.Wrap
                text: root.hint
                color: root.hintInk
                font.family: Metrics.family
                font.pixelSize: root.hintSize
            }
        }
    }

    Timer {
        id: held

        // This describes the present press.
        property bool finger: false
        property bool counts: false
        property bool stepped: false

        function begin() {
            finger = true;
            counts = !Touch.guarded() && !deaf.running;
            stepped = false;
            contact.restart();
            interval = Touch.holdBeforeRepeat;
            if (counts && root.offers.repeats)
                restart();
        }
        function act() {
            deaf.restart();
            root.offers.trigger(root);
        }

        repeat: true
        onTriggered: {
            if (!root.down || !root.visible) {
                stop();
                return;
            }
            stepped = true;
            interval = Touch.repeatEvery;
            root.offers.trigger(root);
        }
    }
    Timer {
        id: contact
        interval: Touch.shortestContact
    }
    Timer {
        id: deaf
        interval: root.lockout
    }
}
