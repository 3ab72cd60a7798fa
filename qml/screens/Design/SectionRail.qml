pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The schedule of a piece in the order in which a maker decides, in one column; the row in hand is sunk, with a bar. Where
// not all rows have the room of a finger, the last one turns to the rest.
Item {
    id: root

    required property RowsModel sections
    readonly property double tallest: Metrics.mm(10.4)
    readonly property int room: Math.max(2, Math.floor((height + 0.5) / Metrics.mm(9.7)))
    readonly property bool paged: sections.count > room
    readonly property int each: Math.max(1, paged ? room - 1 : sections.count)
    readonly property int rows: paged ? room : Math.max(1, sections.count)
    readonly property double pitch: Math.min(tallest, height / rows)
    property int current: 0
    // What the maker turned away from the page of the current row.
    property int turned: 0
    readonly property int page: paged ? (Math.floor(current / each) + turned) % pages : 0
    readonly property int pages: Math.max(1, Math.ceil(sections.count / Math.max(1, each)))

    signal asked(int section)

    function follow(chosen: bool, index: int) {
        if (!chosen)
            return;
        current = index;
        turned = 0;
    }

    Repeater {
        model: root.sections

        Item {
            id: row

            required property int index
            required property string title
            required property string value
            required property string problem
            required property bool missing
            required property bool notice
            required property bool chosen
            readonly property bool here: !root.paged || Math.floor(index / root.each) === root.page

            y: (index % root.each) * root.pitch
            width: root.width
            height: root.pitch - Metrics.mm(0.5)
            visible: here
            onChosenChanged: root.follow(chosen, index)
            Component.onCompleted: root.follow(chosen, index)

            Rectangle {
                x: -Metrics.mm(2)
                width: Metrics.mm(1.5)
                height: parent.height
                visible: row.chosen
                color: Theme.ink
            }
            SectionRow {
                anchors.fill: parent
                index: row.index
                title: row.title
                value: row.value
                problem: row.problem
                missing: row.missing
                notice: row.notice
                current: row.chosen
                offers.enabled: row.here
                onAsked: section => root.asked(section)
            }
        }
    }
    TouchKey {
        y: root.each * root.pitch
        width: root.width
        height: root.pitch - Metrics.mm(0.5)
        legendSize: Metrics.deskText
        offers: ScreenAction {
            name: "theRest"
            text: qsTr("The rest")
            enabled: root.paged
            onTriggered: root.turned += 1
        }
    }
}
