import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One field: its name on the left, its value in its box on the right, or beneath where it is long; then what follows from
// it or what is wrong with it. The row of the field in hand keeps room for its editor.
Column {
    id: root

    required property int index
    required property string title
    required property string of
    required property string value
    required property string note
    required property string problem
    required property bool act
    required property bool missing
    required property bool chosen
    required property pieceDrawing sample
    required property FormViewModel form
    // True while the list that contains the row is shown.
    property bool listed: true
    property double editorRoom: 0
    readonly property bool onPad: chosen && (form.entering === FormViewModel.Length || form.entering === FormViewModel.Number)
    // A line of text is written in its editor, in place of the box.
    readonly property bool writing: chosen && form.entering === FormViewModel.Text
    readonly property double editorAt: gap.y

    signal asked(int field)

    // The frame of the box in hand reaches out of it.
    topPadding: Metrics.mm(1)

    Words {
        width: root.width
        topPadding: root.index > 0 ? Metrics.mm(2) : 0
        bottomPadding: Metrics.mm(0.5)
        visible: root.of !== ""
        text: root.of
        color: Theme.quiet
        font.bold: true
        font.pixelSize: Metrics.deskLabel
    }
    TouchKey {
        id: key
        width: root.width
        height: root.act ? Math.max(Metrics.deskKey, does.implicitHeight + Metrics.mm(2)) : root.writing ? Metrics.deskKey : Math.max(box.y + box.height, name.height)
        legend: ""
        // A value lies sunk in the card; what is done at once is raised.
        framed: root.act
        offers: ScreenAction {
            name: "field" + root.index
            text: root.title
            chosen: root.chosen
            enabled: root.listed
            onTriggered: root.asked(root.index)
        }

        Words {
            id: does
            anchors.verticalCenter: parent.verticalCenter
            x: Metrics.mm(2)
            width: parent.width - 2 * x
            visible: root.act
            text: root.value + " " + root.title
            font.pixelSize: Metrics.deskText
        }
        Rectangle {
            id: mark
            y: name.y + (Math.min(name.height, name.font.pixelSize * 1.2) - height) / 2
            x: Metrics.mm(0.6)
            width: Metrics.mm(1.8)
            height: width
            rotation: 45
            visible: !root.act && (root.missing || root.problem !== "")
            color: root.missing ? "transparent" : Theme.ink
            border.color: Theme.ink
            border.width: 1.5 * Metrics.hairline
        }
        Words {
            id: name
            readonly property double from: mark.visible ? Metrics.mm(4) : 0
            x: from
            y: box.stacked ? 0 : root.writing ? key.height - height : (key.height - height) / 2
            width: box.stacked ? parent.width - x : Math.max(0, box.x - x - Metrics.mm(1.5))
            visible: !root.act
            text: root.title
            font.bold: root.missing
            font.pixelSize: Metrics.deskText
        }
        TextMetrics {
            id: oneLine
            font: name.font
            text: root.title
        }
        FieldValue {
            id: box
            // Name and value stand beside each other where both have the room.
            readonly property double least: Math.min(Metrics.mm(23), root.width * 0.5)
            readonly property double beside: Math.max(least, wanted)
            readonly property bool stacked: wanted > least && oneLine.advanceWidth + name.from + beside + Metrics.mm(3) > root.width
            x: stacked ? 0 : root.width - width
            y: stacked ? name.height + Metrics.mm(1) : 0
            width: stacked ? root.width : beside
            height: stacked ? Math.max(Metrics.mm(9), lines + Metrics.mm(3)) : Metrics.deskKey
            leftAligned: stacked
            visible: !root.act && !root.writing
            value: root.missing ? "" : root.value
            sample: root.sample
            sampled: root.sample.drawn
            inHand: root.chosen
            keyed: root.onPad ? root.form : null
        }
    }
    Item {
        id: gap
        width: root.width
        height: root.chosen && root.editorRoom > 0 ? root.editorRoom + Metrics.mm(3) : 0
    }
    Words {
        width: root.width
        topPadding: Metrics.mm(0.5)
        // How something may be written is told where it is written.
        visible: text !== "" && !root.chosen && (root.value !== "" || root.problem !== "")
        text: root.problem !== "" ? root.problem : root.note
        color: root.problem !== "" ? Theme.ink : Theme.quiet
        font.bold: root.problem !== ""
        font.pixelSize: Metrics.deskLabel
    }
}
