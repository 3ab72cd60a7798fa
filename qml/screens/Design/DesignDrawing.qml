pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The piece to scale on its cloth, with its dimensions: its face, whose borders and bands can be drawn by hand; its back as
// it is marked; the bevels cut through. Or the steps it takes, or all its measures.
Rectangle {
    id: root

    required property DesignViewModel design
    readonly property bool ofSteps: design.view === DesignViewModel.Steps
    readonly property bool ofSection: design.view === DesignViewModel.Section
    readonly property bool ofMeasures: design.view === DesignViewModel.Measures
    // What the foot has no room for: the room, and what cannot be foretold or is missing in stock.
    readonly property string said: (design.comesTo.slice(design.tally.length) + "\n" + design.lacks).trim()
    readonly property bool listed: ofSteps || ofMeasures

    color: Theme.cloth

    PieceView {
        id: piece
        objectName: "piece"
        anchors.fill: parent
        anchors.bottomMargin: Metrics.mm(6)
        leftRoom: Metrics.mm(root.ofSection ? 20 : root.design.inInches ? 24 : 15)
        rightRoom: Metrics.mm(root.ofSection ? 6 : root.design.inInches ? 38 : 24)
        topRoom: Metrics.mm(9)
        bottomRoom: Metrics.mm(10)
        visible: !root.listed
        opacity: root.design.holds ? 1 : 0.45
        drawing: root.design.drawing

        MouseArea {
            // A finger misses its target by some 6 mm.
            readonly property double reach: Metrics.mm(6)

            anchors.fill: parent
            enabled: root.design.view === DesignViewModel.Face
            preventStealing: true
            onPressed: mouse => {
                mouse.accepted = root.design.grab(piece.onPiece(mouse.x, mouse.y), reach * piece.mmPerPixel());
            }
            onPositionChanged: mouse => root.design.drag(piece.onPiece(mouse.x, mouse.y))
            onReleased: root.design.letGo()
            onCanceled: root.design.letGo()
        }
    }
    Repeater {
        model: root.design.chains

        DimensionChain {
            anchors.fill: piece
            visible: !root.listed && root.design.drawn && root.design.holds && root.design.dragged === ""
            origin: piece.origin
            scaling: piece.pixelsPerMm
            drawn: piece.drawing.extent
        }
    }
    Words {
        anchors.right: parent.right
        anchors.rightMargin: Metrics.mm(4)
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Metrics.mm(1)
        visible: !root.listed && root.design.drawn
        // The scale on the glass: "1 : 6.6", or "5.0 : 1" where it is larger than life.
        readonly property double times: piece.pixelsPerMm / Metrics.dotsPerMm
        readonly property string ratio: times >= 1 ? times.toFixed(1) + " : 1" : times > 0 ? "1 : " + (1 / times).toFixed(1) : ""
        text: root.design.caption + ", " + ratio + ", " + (root.design.inInches ? qsTr("all in inches") : qsTr("all in mm"))
        color: Theme.quiet
        font.pixelSize: Metrics.deskLabel
        wrapMode: Text.NoWrap
    }
    Words {
        anchors.centerIn: piece
        width: parent.width * 0.8
        visible: !root.listed && !root.design.drawn
        horizontalAlignment: Text.AlignHCenter
        text: qsTr("The piece is drawn here, to scale, as soon as the size of the artwork is entered.")
        color: Theme.quiet
        font.pixelSize: Metrics.deskText
    }
    RowsPage {
        anchors.fill: parent
        anchors.margins: Metrics.mm(4)
        visible: root.listed
        rows: root.ofSteps ? root.design.steps : root.design.measures
        name: "rows"
        above: root.ofSteps ? root.said : ""
        noteInk: root.ofSteps ? Theme.calm : Theme.quiet
    }
}
