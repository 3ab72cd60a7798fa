pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// Between Back and Done while a measure is taken: what follows from the value, or why it cannot be; the wait that is
// tested first; and what Done still asks for.
Item {
    id: root

    required property MadeViewModel made
    required property ShelfModel shelf
    readonly property string trouble: made.question !== "" ? made.question : made.refusal !== "" ? made.refusal : made.wouldRefuse
    readonly property bool follows: trouble === "" && made.followAfter !== ""

    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.pixelSize: Metrics.label
    }
    Words {
        objectName: "trouble"
        width: parent.width
        visible: text !== ""
        text: root.trouble
        color: Theme.worked
        font.bold: true
        font.pixelSize: Metrics.label
    }
    Words {
        id: label
        objectName: "follows"
        width: parent.width
        visible: root.trouble === ""
        text: root.follows ? root.made.followLabel : root.made.touched ? qsTr("No other figure changes.") : qsTr("Drawn: %1. Set what you measure.").arg(root.made.computed)
        color: Theme.quiet
        font.pixelSize: Metrics.label
    }
    Row {
        y: label.y + label.height
        visible: root.follows
        spacing: Metrics.mm(2.5)

        Words {
            objectName: "before"
            text: root.made.followBefore
            color: Theme.quiet
            wrapMode: Text.NoWrap
        }
        Words {
            text: "→"
            wrapMode: Text.NoWrap
        }
        Words {
            objectName: "after"
            text: root.made.followAfter
            font.bold: true
            wrapMode: Text.NoWrap
        }
        Words {
            visible: text !== ""
            text: root.made.followCount
            wrapMode: Text.NoWrap
        }
    }
    Words {
        id: still
        objectName: "still"
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        width: implicitWidth
        visible: text !== "" && root.trouble === ""
        text: root.made.left > 0 ? qsTr("Done: %1 more").arg(root.made.left) : root.made.touched ? "" : qsTr("Done: as drawn")
        color: Theme.quiet
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
    }
    // The wait that is tested first; the others are on the shelf.
    Repeater {
        model: root.shelf

        Row {
            id: wait

            required property int index
            required property string brief
            required property string piece
            required property list<string> rests
            readonly property double room: root.width - (still.visible ? still.width + Metrics.mm(3) : 0)

            objectName: "wait"
            anchors.bottom: parent?.bottom
            visible: index === 0 && root.trouble.length < 90
            spacing: Metrics.mm(1.5)

            Words {
                id: verb
                anchors.baseline: parent.top
                anchors.baselineOffset: Metrics.label
                text: wait.brief
                color: Theme.calm
                font.bold: true
                font.pixelSize: Metrics.label
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
            ArtworkName {
                id: name
                anchors.baseline: verb.baseline
                visible: text !== "" && verb.width + parent.spacing + implicitWidth <= wait.room
                text: wait.piece
                font.pixelSize: Metrics.labelName
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
            Words {
                anchors.baseline: verb.baseline
                visible: text !== ""
                // The longest that has room.
                text: {
                    const free = wait.room - verb.width - (name.visible ? name.width + wait.spacing : 0) - wait.spacing;
                    for (const one of wait.rests) {
                        if (letters.advanceWidth(one) <= free)
                            return one;
                    }
                    return "";
                }
                font.pixelSize: Metrics.label
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
        }
    }
}
