pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// What the bench waits for: the sentence of the wait that is tested first, and the waits of all pieces over the clock's
// hours, each with its verb where its outline begins. It fills the room it is given.
Item {
    id: root

    required property BenchViewModel bench
    required property ShelfModel shelf
    readonly property bool fits: said.height <= height - axis.height
    readonly property double rowHeight: Metrics.mm(14.6)
    readonly property double axisLeft: Math.min(width * 0.42, Metrics.mm(75))
    readonly property double axisRight: width - Metrics.mm(4)
    readonly property double hour: Metrics.mm(16.27)
    readonly property int rowsShown: Math.max(0, Math.floor((height - said.height - axis.height - Metrics.mm(1)) / rowHeight))
    readonly property double rowsTop: axis.y - Math.min(rowsShown, shelf.count) * rowHeight

    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.pixelSize: Metrics.label
    }
    Column {
        id: said
        width: parent.width

        Words {
            objectName: "refusal"
            width: parent.width
            visible: text !== ""
            text: root.bench.refusal
            color: Theme.worked
            font.bold: true
        }
        Words {
            objectName: "sentence"
            width: parent.width
            text: root.bench.waitSentence
        }
    }
    Repeater {
        model: root.shelf.hourPlaces

        Rectangle {
            required property double modelData

            visible: root.rowsShown > 0 && x < root.axisRight
            x: root.axisLeft + modelData * root.hour
            y: root.rowsTop
            width: Metrics.hairline
            height: axis.y - y + Metrics.mm(1)
            color: Theme.hair
        }
    }
    Repeater {
        model: root.shelf

        Item {
            id: row

            required property int index
            required property string brief
            required property string piece
            required property list<string> rests
            required property var points
            required property double lead
            required property bool window
            required property bool solid
            required property bool closed
            required property bool guessed
            readonly property double begins: root.axisLeft + lead * root.hour

            visible: index < root.rowsShown
            y: root.rowsTop + index * root.rowHeight
            width: root.width
            height: root.rowHeight

            Column {
                width: root.axisLeft - Metrics.mm(3)
                anchors.verticalCenter: parent.verticalCenter

                ArtworkName {
                    width: parent.width
                    visible: text !== ""
                    text: row.piece
                    font.pixelSize: Metrics.labelName
                    elide: Text.ElideRight
                    wrapMode: Text.NoWrap
                    lineHeight: 1
                }
                Row {
                    width: parent.width
                    spacing: Metrics.mm(1.5)

                    // Where the outline leaves no room before it, its words stand here.
                    Words {
                        id: aside
                        objectName: "brief"
                        visible: !brief.visible
                        text: row.brief
                        color: row.window ? Theme.worked : Theme.calm
                        font.bold: true
                        font.pixelSize: Metrics.label
                        wrapMode: Text.NoWrap
                        lineHeight: 1
                    }
                    Words {
                        objectName: "rest"
                        width: parent.width - (aside.visible ? aside.width + parent.spacing : 0)
                        // The longest that has room, or the shortest.
                        text: {
                            let said = "";
                            for (let i = 0; i < row.rests.length; ++i) {
                                said = row.rests[i];
                                if (letters.advanceWidth(said) < width)
                                    break;
                            }
                            return said;
                        }
                        font.pixelSize: Metrics.label
                        lineHeight: 0.9
                    }
                }
            }
            WaitOutline {
                x: root.axisLeft
                y: Metrics.mm(3)
                width: Math.max(0, root.axisRight - x)
                height: parent.height - y
                points: row.points
                lead: row.lead
                hour: root.hour
                window: row.window
                solid: row.solid
                closed: row.closed
                guessed: row.guessed
            }
            Words {
                id: brief
                objectName: "brief"

                readonly property double before: row.begins - Metrics.mm(1.5) - width

                // Before its outline, over what is still to come.
                x: Math.min(before, root.axisRight - width)
                y: parent.height - height - Metrics.mm(1)
                visible: row.lead > 0 && before >= root.axisLeft
                text: row.brief
                color: row.window ? Theme.worked : Theme.calm
                font.bold: true
                font.pixelSize: Metrics.label
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
            Rectangle {
                visible: row.index > 0
                width: parent.width
                height: Metrics.hairline
                color: Theme.hair
            }
        }
    }
    Item {
        id: axis
        y: root.height - height
        width: root.width
        height: Metrics.mm(8)

        Rectangle {
            x: root.axisLeft
            width: root.axisRight - x
            height: 4 * Metrics.hairline
            color: Theme.ink
        }
        Words {
            id: now
            x: root.axisLeft - width / 2
            y: Metrics.mm(1)
            text: qsTr("now")
            font.bold: true
            font.pixelSize: Metrics.label
            lineHeight: 1
        }
        Words {
            visible: root.shelf.count > root.rowsShown
            y: now.y
            text: qsTr("and %1 more").arg(root.shelf.count - root.rowsShown)
            color: Theme.quiet
            font.pixelSize: Metrics.label
            lineHeight: 1
        }
        Repeater {
            model: root.shelf.hourNames

            Words {
                required property string modelData
                required property int index
                readonly property double place: root.shelf.hourPlaces[index] ?? 0

                x: root.axisLeft + place * root.hour - width / 2
                y: now.y
                visible: x > now.x + now.width + Metrics.mm(0.6) && x + width <= root.width
                text: modelData
                color: Theme.quiet
                font.pixelSize: Metrics.label
                lineHeight: 1
            }
        }
    }
}
