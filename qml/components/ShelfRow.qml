pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One wait on the shelf: its verb and time, the piece as titles are written, what of it, and the outline.
Item {
    id: root

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
    required property bool beyond

    // The words that stand before the wait where it speaks for others as well: "and 2 more, first".
    property string before: ""
    property double axisLeft: width / 2
    property double hour: 1
    property int foldHours: 3
    // Where what lies beyond the fold is drawn, and how wide.
    property double beyondLeft: width
    readonly property double foldRight: axisLeft + foldHours * hour
    readonly property color ink: window ? Theme.worked : Theme.calm
    // The words may stand over what is still to come, dotted, but not over an outline.
    readonly property double begins: closed || points.length === 0 && !beyond ? axisLeft : axisLeft + Math.min(lead, foldHours) * hour
    readonly property double room: begins - words.x - Metrics.mm(1)
    // Row by row of what could be said, the first that has room. Its end is left out before anything is cut.
    readonly property string rest: {
        const taken = told.width + name.implicitWidth;
        const join = root.piece === "" ? "" : ", ";
        for (const one of rests) {
            if (one === "")
                break;
            if (taken + letters.advanceWidth(join + one) <= room)
                return join + one;
        }
        return "";
    }

    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.pixelSize: Metrics.label
    }
    Row {
        id: words
        height: parent.height

        Row {
            id: told
            height: parent.height

            Words {
                id: others
                height: parent.height
                verticalAlignment: Text.AlignVCenter
                visible: text !== ""
                text: root.before === "" ? "" : root.before + " "
                color: Theme.quiet
                font.pixelSize: Metrics.label
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
            Words {
                id: verb
                objectName: "brief"
                height: parent.height
                verticalAlignment: Text.AlignVCenter
                text: root.brief + " "
                color: root.ink
                font.bold: true
                font.pixelSize: Metrics.label
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
        }
        ArtworkName {
            id: name
            height: parent.height
            verticalAlignment: Text.AlignVCenter
            visible: told.width + implicitWidth <= root.room || root.before === ""
            text: root.piece
            font.pixelSize: Metrics.labelName
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
        Words {
            objectName: "rest"
            height: parent.height
            verticalAlignment: Text.AlignVCenter
            visible: name.visible && text !== ""
            text: root.rest
            font.pixelSize: Metrics.label
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
    }
    WaitOutline {
        readonly property double from: Math.max(root.axisLeft, words.x + words.width + Metrics.mm(1))
        // What the words stand over is left out of the dots.
        x: from
        y: Metrics.mm(1)
        width: Math.max(0, root.foldRight - x)
        height: parent.height - Metrics.mm(1.6)
        readonly property double passed: (from - root.axisLeft) / root.hour
        points: root.points.map(point => Qt.point(point.x - passed, point.y)).filter(() => !root.beyond)
        lead: Math.max(0, root.lead - passed)
        hour: root.hour
        window: root.window
        solid: root.solid
        closed: root.closed
        guessed: root.guessed
    }
    WaitOutline {
        visible: root.beyond
        x: root.beyondLeft
        y: Metrics.mm(1)
        width: root.width - x
        height: parent.height - Metrics.mm(1.6)
        beyond: true
        window: root.window
    }
}
