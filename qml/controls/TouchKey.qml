import QtQuick
import Mountwright.Theme

// A key for knuckles: acts on release inside, ignores what is too short, too soon or aimed at an earlier screen.
Rectangle {
    id: root

    required property string legend
    property string hint: ""
    property bool filled: false
    property color ink: Theme.ink
    property color ground: Theme.paper
    property int legendSize: Metrics.text
    property int hintSize: Metrics.label
    readonly property bool isKey: true

    signal acted

    width: Metrics.key
    height: Metrics.key
    radius: Metrics.radius
    color: filled ? ink : ground
    border.color: ink
    border.width: area.pressed ? 4 * Metrics.hairline : 2 * Metrics.hairline

    Column {
        anchors.centerIn: parent
        width: parent.width - 2 * Metrics.hairline * 3

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
            color: root.filled ? root.ground : root.ink
            font.family: Metrics.family
            font.pixelSize: root.hintSize
        }
    }

    MouseArea {
        id: area

        property bool counts: false

        anchors.fill: parent
        onPressed: {
            counts = !Touch.guarded() && !lockout.running;
            contact.restart();
        }
        onReleased: {
            if (!counts || !containsMouse || contact.running)
                return;
            lockout.restart();
            root.acted();
        }
    }
    Timer {
        id: contact
        interval: Touch.shortestContact
    }
    Timer {
        id: lockout
        interval: Touch.sameKeyLockout
    }
}
