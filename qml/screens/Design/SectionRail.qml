pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The maker's decisions in their order: the piece on the left, its decoration on the right. A section with an error is
// marked.
Item {
    id: root

    required property RowsModel sections
    readonly property int rows: Math.ceil(sections.count / 2)
    readonly property double gap: Metrics.mm(1.5)
    readonly property double rowWidth: (width - gap) / 2
    readonly property double rowHeight: (height - (rows - 1) * gap) / Math.max(1, rows)

    signal asked(int section)

    Repeater {
        model: root.sections

        TouchKey {
            id: key

            required property int index
            required property string title
            required property string value
            required property string problem
            required property bool chosen

            x: index < root.rows ? 0 : root.rowWidth + root.gap
            y: (index % root.rows) * (root.rowHeight + root.gap)
            width: root.rowWidth
            height: root.rowHeight
            legendSize: Metrics.deskText
            hintSize: Metrics.deskLabel
            hintInk: filled ? ground : problem !== "" ? Theme.worked : ink
            offers: ScreenAction {
                name: "section" + key.index
                text: key.title
                hint: key.problem !== "" ? key.problem : key.value
                chosen: key.chosen
                onTriggered: root.asked(key.index)
            }
        }
    }
}
