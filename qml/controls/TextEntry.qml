import QtQuick
import Mountwright.Theme

// A line to write in. The tablet provides the keyboard.
Rectangle {
    id: root

    property alias text: input.text
    property string placeholder: ""
    readonly property bool writing: input.activeFocus

    signal accepted(string text)
    signal over  // the maker pressed Enter or went elsewhere

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
    border.color: input.activeFocus ? Theme.ink : Theme.keyLine
    border.width: input.activeFocus ? 3 * Metrics.hairline : Metrics.hairline

    Words {
        anchors.fill: input
        visible: input.text === "" && !input.activeFocus
        verticalAlignment: Text.AlignVCenter
        text: root.placeholder
        color: Theme.quiet
        font.pixelSize: Metrics.deskText
        wrapMode: Text.NoWrap
        elide: Text.ElideRight
    }
    TextInput {
        id: input
        anchors.fill: parent
        anchors.margins: Metrics.mm(2)
        verticalAlignment: TextInput.AlignVCenter
        clip: true
        color: Theme.ink
        selectionColor: Theme.calm
        selectedTextColor: Theme.ground
        font.family: Metrics.family
        font.pixelSize: Metrics.deskText
        onAccepted: root.accepted(text)
        onEditingFinished: root.over()
    }
}
