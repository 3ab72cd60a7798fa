pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Forms
import Mountwright.Theme
import Mountwright.ViewModels

// A design at the desk, with clean hands: the decisions on the left, the piece to scale on the right.
ScreenBase {
    id: root

    required property DesignViewModel design
    readonly property double margin: Metrics.mm(3)
    readonly property double distance: Metrics.deskDistance

    doneAction.enabled: editor.visible
    actions: [
        ScreenAction {
            name: "undo"
            text: qsTr("Undo")
            enabled: root.design.canUndo
            place: ScreenAction.Foot
            onTriggered: root.design.undo()
        },
        ScreenAction {
            name: "redo"
            text: qsTr("Redo")
            enabled: root.design.canRedo
            place: ScreenAction.Foot
            onTriggered: root.design.redo()
        },
        ScreenAction {
            name: "again"
            text: qsTr("For another picture")
            place: ScreenAction.Foot
            onTriggered: root.design.sameAgain()
        },
        ScreenAction {
            name: "toBench"
            text: qsTr("To the bench")
            filled: root.design.complete
            place: ScreenAction.Foot
            onTriggered: {
                if (root.design.toBench())
                    root.over();
            }
        }
    ]

    TouchKey {
        id: back
        x: root.margin
        y: root.margin
        width: rail.width
        height: Metrics.mm(11)
        legendSize: Metrics.deskText
        offers: ScreenAction {
            name: "leaveDesign"
            text: qsTr("Pieces")
            onTriggered: root.leave()
        }
    }
    Words {
        id: title
        anchors.verticalCenter: back.verticalCenter
        x: fields.x
        width: root.width - x - root.margin
        text: root.design.title + (root.design.state === "" ? "" : "  ·  " + root.design.state)
        font.bold: true
        font.pixelSize: Metrics.deskTitle
        wrapMode: Text.NoWrap
        elide: Text.ElideRight
    }
    SectionRail {
        id: rail
        objectName: "rail"
        x: root.margin
        anchors.top: back.bottom
        anchors.topMargin: Metrics.mm(2)
        anchors.bottom: parent.bottom
        anchors.bottomMargin: root.margin
        width: Metrics.mm(54)
        sections: root.design.sections
        onAsked: section => root.design.chooseSection(section)
    }
    Item {
        id: fields
        x: rail.x + rail.width + Metrics.mm(4)
        anchors.top: rail.top
        anchors.bottom: rail.bottom
        width: (root.width - x - root.margin) * 0.46

        FieldList {
            anchors.fill: parent
            visible: root.design.entering === FormViewModel.Nothing
            form: root.design
        }
        FieldEditor {
            id: editor
            anchors.fill: parent
            visible: root.design.entering !== FormViewModel.Nothing
            form: root.design
        }
    }
    DesignDrawing {
        id: drawn
        x: fields.x + fields.width + Metrics.mm(4)
        width: root.width - x - root.margin
        anchors.top: rail.top
        anchors.bottom: said.top
        anchors.bottomMargin: Metrics.mm(2)
        design: root.design
    }
    Words {
        id: said
        x: drawn.x
        width: drawn.width
        anchors.bottom: keys.top
        anchors.bottomMargin: Metrics.mm(2)
        text: root.design.dragged !== "" ? root.design.dragged : refused ? root.design.refusal : root.design.lacks === "" ? root.design.comesTo : root.design.comesTo + "\n" + root.design.lacks
        color: refused || root.design.dragged !== "" ? Theme.worked : Theme.quiet
        font.bold: root.design.dragged !== ""
        font.pixelSize: root.design.dragged !== "" ? Metrics.deskTitle : Metrics.deskLabel

        readonly property bool refused: root.design.refusal !== "" && root.design.entering === FormViewModel.Nothing
    }
    Row {
        id: keys
        x: drawn.x
        anchors.bottom: rail.bottom
        spacing: Metrics.deskGap
        readonly property double keyWidth: (drawn.width - 3 * spacing) / 4.4

        ActionKeys {
            area: root
            place: ScreenAction.Foot

            TouchKey {
                required property ScreenAction modelData
                readonly property bool onwards: modelData.name === "toBench"

                offers: modelData
                stays: true
                width: keys.keyWidth * (onwards ? 1.4 : 1)
                height: Metrics.mm(13)
                legendSize: onwards ? Metrics.deskText : Metrics.deskLabel
            }
        }
    }

    // Enter and the pedal store the entry.
    function done() {
        editor.keepAndGoOn();
    }
    function back() {
        if (editor.visible)
            editor.stepBack();
        else
            leave();
    }
}
