pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The answers to a choice, each with its reason where it is a proposal. Many short ones stand in two columns.
GridView {
    id: root

    required property DesignViewModel design
    readonly property bool reasons: design.optionsHaveReasons
    readonly property int columns: !reasons && count > 6 ? 2 : 1

    clip: true
    model: design.options
    cellWidth: width / columns
    cellHeight: reasons ? Metrics.mm(16) : Metrics.mm(11)
    boundsBehavior: Flickable.StopAtBounds

    delegate: Item {
        id: cell

        required property int index
        required property string title
        required property string note
        required property bool chosen

        width: root.cellWidth
        height: root.cellHeight

        TouchKey {
            objectName: "option" + cell.index
            width: cell.width - (root.columns > 1 && cell.index % 2 === 0 ? Metrics.deskGap : 0)
            height: cell.height - Metrics.mm(1.5)
            legend: cell.title
            legendSize: Metrics.deskText
            hint: cell.note
            hintSize: Metrics.deskLabel
            filled: cell.chosen
            onActed: root.design.chooseOption(cell.index)
        }
    }
}
