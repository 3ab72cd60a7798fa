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
    readonly property double rowHeight: Metrics.mm(13.8)
    readonly property double axisLeft: Math.min(width * 0.42, Metrics.mm(75))
    readonly property double pictureWidth: upright ? 0 : Metrics.mm(16.5)
    readonly property bool upright: width < Metrics.mm(140)
    readonly property double axisRight: width - Metrics.mm(2)
    readonly property double hour: Metrics.mm(16.27)
    readonly property int rowsShown: Math.max(0, Math.floor((height - said.height - axis.height - Metrics.mm(1)) / rowHeight))
    readonly property double rowsTop: axis.y - Math.min(rowsShown, shelf.count) * rowHeight

    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.pixelSize: Metrics.label
    }
    FontMetrics {
        id: titles
        font.family: Metrics.artworkFamily
        font.italic: true
        font.pixelSize: Metrics.labelName
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
            required property string title
            required property double goneAt
            required property pieceDrawing drawing
            required property rect wet
            readonly property double begins: root.axisLeft + lead * root.hour

            visible: index < root.rowsShown
            y: root.rowsTop + index * root.rowHeight
            width: root.width
            height: root.rowHeight

            WetPiece {
                visible: !root.upright
                y: Metrics.mm(0.6)
                width: root.pictureWidth
                height: parent.height - 2 * y
                drawing: row.drawing
                wet: row.wet
            }
            Column {
                x: root.upright ? 0 : root.pictureWidth + Metrics.mm(2)
                width: root.axisLeft - Metrics.mm(3) - x
                anchors.verticalCenter: parent.verticalCenter

                Row {
                    width: parent.width
                    spacing: Metrics.mm(1.5)

                    ArtworkName {
                        id: name
                        readonly property double room: parent.width - (aside.visible ? aside.implicitWidth + parent.spacing : 0)

                        visible: text !== ""
                        // The whole title where it has room, or the word that stands for it on the shelf.
                        text: titles.advanceWidth(row.title) <= room ? row.title : row.piece
                        font.pixelSize: Metrics.labelName
                        wrapMode: Text.NoWrap
                        lineHeight: 1
                    }
                    // Where the outline leaves no room before it, its words stand here.
                    Words {
                        id: aside
                        objectName: "brief"
                        anchors.baseline: name.visible ? name.baseline : undefined
                        visible: !brief.visible
                        text: row.brief
                        color: row.window ? Theme.worked : Theme.calm
                        font.bold: true
                        font.pixelSize: Metrics.label
                        wrapMode: Text.NoWrap
                        lineHeight: 1
                    }
                }
                Words {
                    objectName: "rest"
                    width: parent.width
                    // The longest that has room, or the shortest.
                    text: {
                        let said = "";
                        for (let i = 0; i < row.rests.length; ++i) {
                            if (row.rests[i] === "")
                                break;
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
            Words {
                readonly property double ends: root.axisLeft + row.goneAt * root.hour + Metrics.mm(1)

                objectName: "gone"
                x: ends
                y: brief.y
                visible: row.goneAt > 0 && ends + width <= root.axisRight
                text: qsTr("likely gone")
                color: Theme.worked
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
    HourAxis {
        id: axis
        y: root.height - height
        // Behind the outlines.
        z: -1
        width: root.axisRight
        height: implicitHeight
        shelf: root.shelf
        axisLeft: root.axisLeft
        hour: root.hour
        rise: root.rowsShown > 0 ? y - root.rowsTop : 0
    }
    Words {
        visible: root.shelf.count > root.rowsShown
        y: axis.y + axis.namesTop
        text: qsTr("and %1 more").arg(root.shelf.count - root.rowsShown)
        color: Theme.quiet
        font.pixelSize: Metrics.label
        lineHeight: 1
    }
}
