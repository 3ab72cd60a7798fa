import QtQuick
import Mountwright.Theme

// A key for knuckles: acts on release inside, ignores what is too short, too soon or aimed at an earlier screen.
Rectangle {
    id: root

    required property string legend
    // What it is called where its legend does not say so.
    property string called: legend
    property string hint: ""
    property bool filled: false
    property color ink: Theme.ink
    property color ground: Theme.paper
    property color hintInk: filled ? ground : ink
    property int legendSize: Metrics.text
    property int hintSize: Metrics.label
    // Held down it acts again and again: for stepping a value.
    property bool repeats: false
    // How long the same key is deaf after a press.
    property int lockout: Touch.sameKeyLockout
    readonly property bool isKey: true

    signal acted

    Accessible.role: Accessible.Button
    Accessible.name: called
    Accessible.onPressAction: root.acted()

    width: Metrics.key
    height: Metrics.key
    radius: Metrics.radius
    color: filled ? ink : ground
    border.color: ink
    border.width: area.pressed ? 4 * Metrics.hairline : 2 * Metrics.hairline

    Column {
        anchors.centerIn: parent
        width: parent.width - 2 * Math.min(Metrics.mm(1.5), parent.width * 0.05)

        Text {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            wrapMode: Text.Wrap
            text: root.legend
            color: root.filled ? root.ground : root.ink
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

    MouseArea {
        id: area

        property bool counts: false

        anchors.fill: parent
        onPressed: {
            counts = !Touch.guarded() && !deaf.running;
            contact.restart();
            if (counts && root.repeats)
                held.restart();
        }
        onReleased: {
            const stepped = held.stepped;
            held.end();
            if (stepped || !counts || !containsMouse || contact.running)
                return;
            deaf.restart();
            root.acted();
        }
    }
    Timer {
        id: held

        property bool stepped: false

        function end() {
            stop();
            stepped = false;
            interval = Touch.holdBeforeRepeat;
        }

        interval: Touch.holdBeforeRepeat
        repeat: true
        onTriggered: {
            if (!area.pressed || !area.containsMouse || !root.visible) {
                stop();
                return;
            }
            stepped = true;
            interval = Touch.repeatEvery;
            root.acted();
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
