pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The shelf: the running waits, in the order of their next events, on one axis from now.
Item {
    id: root

    required property ShelfModel shelf
    readonly property double axisLeft: width * 0.5
    readonly property double axisWidth: width - axisLeft - Metrics.mm(1)
    readonly property double room: height - axis.height
    property int hidden: 0

    function settle() {
        let top = gap.visible ? gap.height : 0;
        let over = 0;
        for (let i = 0; i < rows.count; ++i) {
            const row = rows.itemAt(i);
            if (row === null)
                return;
            row.y = top;
            top += row.height + Metrics.mm(0.5);
            // The first row is the next event, so it is never left out.
            row.shown = i === 0 || top <= root.room;
            if (!row.shown)
                over += 1;
        }
        hidden = over;
    }

    onRoomChanged: Later.call(settle)

    Words {
        visible: root.shelf.count === 0
        y: (root.height - height) / 2
        width: root.width
        text: root.shelf.unknown === "" ? qsTr("Nothing is drying.") : root.shelf.unknown
        color: root.shelf.unknown === "" ? Theme.quiet : Theme.worked
        font.pixelSize: Metrics.label
    }
    Words {
        id: gap
        visible: root.shelf.count > 0 && root.shelf.unknown !== ""
        width: root.width
        text: root.shelf.unknown
        color: Theme.worked
        font.pixelSize: Metrics.label
        lineHeight: 1
        onVisibleChanged: Later.call(root.settle)
        onHeightChanged: Later.call(root.settle)
    }
    Repeater {
        id: rows
        model: root.shelf
        onCountChanged: Later.call(root.settle)

        ShelfRow {
            property bool shown: true

            visible: shown
            width: root.width - Metrics.mm(1)
            axisLeft: root.axisLeft
            onHeightChanged: Later.call(root.settle)
            Component.onCompleted: Later.call(root.settle)
        }
    }
    Item {
        id: axis
        visible: root.shelf.count > 0
        width: root.width
        height: Metrics.mm(7)
        y: root.height - height

        Words {
            id: more
            visible: root.hidden > 0
            anchors.bottom: parent.bottom
            text: qsTr("and %1 more").arg(root.hidden)
            color: Theme.quiet
            font.pixelSize: Metrics.label
            lineHeight: 1
        }
        Rectangle {
            x: root.axisLeft
            width: root.axisWidth
            height: Metrics.hairline
            color: Theme.quiet
        }
        Words {
            id: now
            x: root.axisLeft
            anchors.bottom: parent.bottom
            text: qsTr("now")
            color: Theme.quiet
            font.pixelSize: Metrics.label
            lineHeight: 1
        }
        Repeater {
            model: root.shelf.tickNames

            Words {
                required property string modelData
                required property int index
                // Names and places change one after the other.
                readonly property double place: root.shelf.tickPlaces[index] ?? 0

                readonly property double tick: root.axisLeft + place * root.axisWidth
                readonly property double room: index === 0 ? place : place - (root.shelf.tickPlaces[index - 1] ?? 0)

                // The word is right of its tick; it is left out where the previous word still takes the room.
                x: tick + Metrics.mm(0.8)
                visible: x + width <= root.width + Metrics.mm(1) && tick > now.x + now.width + Metrics.mm(1) && (index === 0 || room * root.axisWidth > width + Metrics.mm(1.5))
                y: axis.height - height
                text: modelData
                color: Theme.quiet
                font.pixelSize: Metrics.label
                lineHeight: 1

                Rectangle {
                    x: parent.tick - parent.x
                    y: -parent.y
                    width: Metrics.hairline
                    height: Metrics.mm(1.6)
                    color: Theme.quiet
                }
            }
        }
    }
}
