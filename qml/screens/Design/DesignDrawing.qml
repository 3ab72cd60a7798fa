pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The piece to scale: its face, whose borders and bands can be drawn by hand; its back as it is marked; the bevels cut
// through, five times as large; and the steps that it takes.
Item {
    id: root

    required property DesignViewModel design
    readonly property bool ofSteps: design.view === DesignViewModel.Steps

    Row {
        id: views
        spacing: Metrics.deskGap
        readonly property double keyWidth: (root.width - 3 * spacing) / 4

        Repeater {
            model: [
                {
                    "view": DesignViewModel.Face,
                    "called": qsTr("Face")
                },
                {
                    "view": DesignViewModel.Back,
                    "called": qsTr("Back, marked")
                },
                {
                    "view": DesignViewModel.Section,
                    "called": qsTr("Bevels 5:1")
                },
                {
                    "view": DesignViewModel.Steps,
                    "called": qsTr("Steps")
                }
            ]

            TouchKey {
                id: viewKey

                required property var modelData

                width: views.keyWidth
                height: Metrics.deskKey
                legendSize: Metrics.deskLabel
                offers: ScreenAction {
                    name: "view" + viewKey.modelData.view
                    text: viewKey.modelData.called
                    chosen: root.design.view === viewKey.modelData.view
                    onTriggered: root.design.look(viewKey.modelData.view)
                }
            }
        }
    }
    PieceView {
        id: piece
        objectName: "piece"
        anchors.top: views.bottom
        anchors.topMargin: Metrics.mm(2)
        anchors.bottom: parent.bottom
        width: parent.width
        visible: !root.ofSteps
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
    Words {
        anchors.centerIn: piece
        width: parent.width * 0.8
        visible: !root.ofSteps && !root.design.drawn
        horizontalAlignment: Text.AlignHCenter
        text: qsTr("The piece is drawn here, to scale, as soon as the size of the artwork is entered.")
        color: Theme.quiet
        font.pixelSize: Metrics.deskText
    }
    ListView {
        id: steps
        anchors.top: views.bottom
        anchors.topMargin: Metrics.mm(2)
        anchors.bottom: parent.bottom
        width: parent.width
        visible: root.ofSteps
        clip: true
        model: root.design.steps
        spacing: Metrics.mm(2)
        boundsBehavior: Flickable.StopAtBounds

        delegate: Item {
            id: line

            required property string title
            required property string value
            required property string note

            width: steps.width
            implicitHeight: technique.height + waits.height

            Words {
                id: technique
                width: line.width - toll.width - Metrics.mm(2)
                text: line.title
                font.bold: true
                font.pixelSize: Metrics.deskText
            }
            Words {
                id: toll
                anchors.right: line.right
                anchors.rightMargin: Metrics.mm(1)
                text: line.value
                color: Theme.quiet
                font.pixelSize: Metrics.deskLabel
                wrapMode: Text.NoWrap
            }
            Words {
                id: waits
                anchors.top: technique.bottom
                width: line.width
                height: line.note !== "" ? implicitHeight : 0
                visible: line.note !== ""
                text: line.note
                color: Theme.calm
                font.pixelSize: Metrics.deskLabel
            }
        }
    }
}
