pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The clock's hours under outlines: a line with a mark at the present, the hours that have room, and a hair line upwards
// at each of them. Its upper edge is the line.
Item {
    id: root

    required property ShelfModel shelf
    required property double axisLeft
    required property double hour
    // Where the line begins, and how far up the hours reach.
    property double from: axisLeft
    property double rise: 0
    // Beyond so many hours stands what lies beyond, by its name.
    property double hours: (width - axisLeft) / hour
    property bool folded: false
    readonly property double namesTop: Metrics.mm(1.2)

    implicitHeight: namesTop + now.implicitHeight

    Repeater {
        model: root.shelf.hourPlaces

        Rectangle {
            required property double modelData

            visible: modelData < root.hours && x < root.width
            x: root.axisLeft + modelData * root.hour
            y: -root.rise
            width: Metrics.hairline
            height: root.rise + Metrics.mm(1.5)
            color: Theme.hair
        }
    }
    Rectangle {
        x: root.from
        width: root.width - x
        height: 4 * Metrics.hairline
        color: Theme.ink
    }
    Rectangle {
        x: root.axisLeft
        y: -Metrics.mm(1)
        width: Metrics.mm(1)
        height: Metrics.mm(2.4)
        color: Theme.ink
    }
    Words {
        id: now
        x: root.axisLeft - width / 2
        y: root.namesTop
        text: qsTr("now")
        font.bold: true
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
    Words {
        id: beyond
        objectName: "beyond"
        visible: root.folded && text !== ""
        x: root.width - width
        y: root.namesTop
        text: root.shelf.beyond
        color: Theme.quiet
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
    Repeater {
        model: root.shelf.hourNames

        Words {
            required property string modelData
            required property int index
            // Places and names change one after the other.
            readonly property double place: root.shelf.hourPlaces[index] ?? 0
            readonly property double before: beyond.visible ? beyond.x - Metrics.mm(0.6) : root.width

            x: root.axisLeft + place * root.hour - width / 2
            y: root.namesTop
            visible: place < root.hours && x > now.x + now.width + Metrics.mm(0.6) && x + width <= before
            text: modelData
            color: Theme.quiet
            font.pixelSize: Metrics.label
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
    }
}
