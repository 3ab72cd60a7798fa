import QtQuick
import Mountwright.Theme

// A line to write in. What the keyboard is, is the tablet's affair.
Rectangle {
    id: root

    property alias text: input.text

    signal accepted(string text)

    function begin(value: string) {
        input.text = value;
        input.forceActiveFocus();
        input.selectAll();
    }
    function leave() {
        input.focus = false;
    }

    height: Metrics.deskKey
    color: Theme.card
    border.color: input.activeFocus ? Theme.worked : Theme.pencil
    border.width: input.activeFocus ? 3 * Metrics.hairline : Metrics.hairline
    radius: Metrics.radius

    TextInput {
        id: input
        anchors.fill: parent
        anchors.margins: Metrics.mm(2)
        verticalAlignment: TextInput.AlignVCenter
        clip: true
        color: Theme.ink
        selectionColor: Theme.calm
        selectedTextColor: Theme.paper
        font.family: Metrics.family
        font.pixelSize: Metrics.deskText
        onAccepted: root.accepted(text)
    }
}
