pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The answers to a choice: many short ones in two columns, proposals beneath each other with their result and reason.
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
                width: cell.width - (grid.columns > 1 && cell.index % 2 === 0 ? Metrics.deskGap : 0)
                height: cell.height - Metrics.mm(1.5)
                legendSize: Metrics.deskText
                offers: ScreenAction {
                    name: "option" + cell.index
                    text: cell.title
                    chosen: cell.chosen
                    enabled: root.visible
                    onTriggered: root.form.chooseOption(cell.index)
                }
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

            width: list.width
            height: said.height + Metrics.mm(3)
            legend: ""
            // An answer that cannot be worked shows the reason and cannot be chosen.
            stays: true
            opacity: enabled ? 1 : 0.6
            offers: ScreenAction {
                name: "option" + proposal.index
                text: proposal.title
                chosen: proposal.chosen
                enabled: root.visible && proposal.problem === ""
                onTriggered: root.form.chooseOption(proposal.index)
            }

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
