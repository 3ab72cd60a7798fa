pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One place to go to: a wait with its piece, its time and its outline, to be tested; or another piece.
TouchKey {
    id: root

    required property int index
    required property string brief
    required property string title
    required property string piece
    required property list<string> rests
    required property var points
    required property double lead
    required property bool window
    required property bool solid
    required property bool closed
    required property bool guessed
    required property bool beyond
    required property bool isWait
    required property bool isReturn
    required property pieceDrawing drawing
    required property rect wet
    // Where the outlines stand; nought where there is no room for them.
    property double axisLeft: 0
    property double hour: 1
    property int foldHours: 3
    readonly property string what: rests.length > 0 ? rests[0] : ""
    readonly property bool drawn: axisLeft > 0 && isWait
    readonly property double inset: Metrics.mm(1.4)

    signal taken

    legend: ""
    height: Metrics.benchKey
    offers: ScreenAction {
        name: "place" + root.index
        text: root.isReturn ? qsTr("Back to %1").arg(root.title) : (root.title === "" ? "" : root.title + ", ") + root.brief + (root.what === "" ? "" : ", " + root.what)
        onTriggered: root.taken()
    }

    WetPiece {
        id: picture
        x: Metrics.mm(2.6)
        y: root.inset
        width: Metrics.mm(24)
        height: root.height - 2 * root.inset
        drawing: root.drawing
        wet: root.wet
    }
    FitPane {
        id: pane
        x: picture.x + picture.width + Metrics.mm(2)
        y: root.inset
        width: (root.drawn ? root.axisLeft : root.width) - Metrics.mm(2) - x
        height: root.height - 2 * root.inset
        key: root.title + root.brief + root.what + root.isWait
        tightest: 3

        Row {
            width: parent.width
            spacing: Metrics.mm(1.5)
            visible: root.title !== ""

            Words {
                id: back
                anchors.baseline: name.baseline
                visible: root.isReturn
                text: qsTr("back to")
                color: Theme.quiet
                font.pixelSize: Metrics.label
                wrapMode: Text.NoWrap
            }
            ArtworkName {
                id: name
                width: Math.max(0, Math.min(implicitWidth, parent.width - (back.visible ? back.width + parent.spacing : 0)))
                // The word that stands for it on the shelf, where there is no other way.
                text: pane.level < 3 ? root.title : root.piece
                lineHeight: 0.9
            }
        }
        Words {
            objectName: "brief"
            width: parent.width
            visible: text !== ""
            text: root.brief
            color: !root.isWait ? Theme.ink : root.window ? Theme.worked : Theme.calm
            font.bold: root.isWait
            font.pixelSize: root.isWait && pane.level === 0 ? Metrics.text : Metrics.label
            lineHeight: 0.9
        }
        Words {
            objectName: "rest"
            width: parent.width
            visible: root.isWait && text !== ""
            text: pane.level < 2 || root.rests.length < 2 ? root.what : root.rests[root.rests.length - 2]
            font.pixelSize: Metrics.label
            lineHeight: 0.9
        }
    }
    WaitOutline {
        visible: root.drawn && !root.beyond
        x: root.axisLeft
        y: Metrics.mm(4)
        width: root.foldHours * root.hour
        height: root.height - 2 * y
        points: root.points
        lead: root.lead
        hour: root.hour
        window: root.window
        solid: root.solid
        closed: root.closed
        guessed: root.guessed
    }
    WaitOutline {
        visible: root.drawn && root.beyond
        x: root.axisLeft + (root.foldHours + 0.15) * root.hour
        y: Metrics.mm(4)
        width: root.width - Metrics.mm(2) - x
        height: root.height - 2 * y
        beyond: true
        window: root.window
    }
}
