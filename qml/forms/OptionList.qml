pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The answers to a choice: many short ones in two columns, proposals beneath each other with what they come to and why.
Item {
    id: root

    required property FormViewModel form
    readonly property bool reasons: form.optionsHaveReasons

    GridView {
        id: grid
        readonly property int columns: count > 6 ? 2 : 1

        anchors.fill: parent
        visible: !root.reasons
        clip: true
        model: root.reasons ? null : root.form.options
        cellWidth: width / columns
        cellHeight: Metrics.mm(11)
        boundsBehavior: Flickable.StopAtBounds

        delegate: Item {
            id: cell

            required property int index
            required property string title
            required property bool chosen

            width: grid.cellWidth
            height: grid.cellHeight

            TouchKey {
                objectName: "option" + cell.index
                width: cell.width - (grid.columns > 1 && cell.index % 2 === 0 ? Metrics.deskGap : 0)
                height: cell.height - Metrics.mm(1.5)
                legend: cell.title
                legendSize: Metrics.deskText
                filled: cell.chosen
                onActed: root.form.chooseOption(cell.index)
            }
        }
    }
    ListView {
        id: list
        anchors.fill: parent
        visible: root.reasons
        clip: true
        model: root.reasons ? root.form.options : null
        spacing: Metrics.mm(1.5)
        boundsBehavior: Flickable.StopAtBounds

        delegate: TouchKey {
            id: proposal

            required property int index
            required property string title
            required property string note
            required property string problem
            required property bool chosen

            objectName: "option" + index
            width: list.width
            height: said.height + Metrics.mm(3)
            legend: ""
            called: title
            filled: chosen
            // What cannot be worked says why and is not taken.
            enabled: problem === ""
            opacity: enabled ? 1 : 0.6
            onActed: root.form.chooseOption(index)

            Column {
                id: said
                x: Metrics.mm(2.5)
                width: parent.width - 2 * x
                anchors.verticalCenter: parent.verticalCenter

                Words {
                    width: said.width
                    text: proposal.title
                    color: proposal.hintInk
                    font.bold: true
                    font.pixelSize: Metrics.deskText
                }
                Words {
                    width: said.width
                    text: proposal.note
                    color: proposal.hintInk
                    font.pixelSize: Metrics.deskLabel
                }
            }
        }
    }
}
