pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Forms
import Mountwright.Theme
import Mountwright.ViewModels

// A design at the desk, with clean hands: the schedule of decisions, the fields of the one in hand on their card, and the
// piece to scale beside them. On a tablet that stands upright the card lies beneath the piece.
ScreenBase {
    id: root

    required property DesignViewModel design
    required property WatchViewModel watch
    readonly property double margin: Metrics.deskMargin
    readonly property double distance: Metrics.deskDistance
    readonly property bool upright: height > width
    readonly property double under: head.y + head.height + Metrics.mm(1.5)

    doneAction.enabled: root.design.entering !== FormViewModel.Nothing
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
            name: "toBench"
            text: qsTr("To the bench")
            filled: true
            enabled: root.design.complete
            place: ScreenAction.Foot
            onTriggered: {
                if (root.design.toBench())
                    root.over();
            }
        }
    ]

    DesignHead {
        id: head
        x: root.margin
        y: Metrics.mm(2.4)
        width: (root.upright ? root.width - root.margin : views.x) - Metrics.mm(3) - x
        time: root.watch.time
        title: root.design.title
        about: root.design.about
        onOver: root.leave()
    }
    Row {
        id: views
        x: root.upright ? card.x + Metrics.mm(1) : root.width - root.margin - width
        y: root.upright ? root.under : head.y
        spacing: root.upright ? Metrics.mm(1.5) : Metrics.deskGap

        Repeater {
            model: [
                {
                    "view": DesignViewModel.Face,
                    "called": qsTr("Face")
                },
                {
                    "view": DesignViewModel.Back,
                    "called": qsTr("Back")
                },
                {
                    "view": DesignViewModel.Section,
                    "called": qsTr("Bevels")
                },
                {
                    "view": DesignViewModel.Steps,
                    "called": qsTr("Steps")
                },
                {
                    "view": DesignViewModel.Measures,
                    "called": qsTr("Measures")
                }
            ]

            TouchKey {
                id: viewKey

                required property var modelData

                width: letters.advanceWidth(viewKey.modelData.called) + Metrics.mm(root.upright ? 3.4 : 5)
                height: Metrics.deskKey
                margin: 0
                legendSize: Metrics.deskText
                offers: ScreenAction {
                    name: "view" + viewKey.modelData.view
                    text: viewKey.modelData.called
                    chosen: root.design.view === viewKey.modelData.view
                    onTriggered: root.design.look(viewKey.modelData.view)
                }
            }
        }
    }
    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.deskText
    }
    SectionRail {
        id: rail
        objectName: "rail"
        x: Metrics.mm(2)
        y: root.under
        width: Metrics.mm(48)
        height: root.upright ? foot.y - Metrics.mm(2) - y : root.height - y - Metrics.mm(1)
        sections: root.design.sections
        onAsked: section => root.design.chooseSection(section)
    }
    Rectangle {
        id: card
        x: rail.x + rail.width + Metrics.mm(1)
        y: root.upright ? drawn.y + drawn.height : root.under
        width: root.upright ? root.width - x : Metrics.mm(54)
        height: foot.y - Metrics.mm(2) - y - conflict.height
        color: Theme.card

        FieldList {
            id: fields
            anchors.fill: parent
            anchors.leftMargin: Metrics.mm(3.4)
            anchors.rightMargin: Metrics.mm(3)
            anchors.topMargin: Metrics.mm(2.4)
            anchors.bottomMargin: Metrics.mm(1.4)
            headed: false
            ground: card.color
            form: root.design
        }
    }
    Rectangle {
        anchors.fill: conflict
        visible: conflict.visible
        color: Theme.cloth
    }
    ConflictBox {
        id: conflict
        x: card.x
        y: card.y + card.height
        width: card.width
        height: implicitHeight
        design: root.design
    }
    DesignDrawing {
        id: drawn
        x: root.upright ? card.x : card.x + card.width
        y: root.upright ? root.under + Metrics.deskKey + Metrics.mm(2) : root.under
        width: root.width - x
        height: root.upright ? root.height * 0.36 : foot.y - Metrics.mm(2) - y
        design: root.design
    }
    DesignFoot {
        id: foot
        x: root.upright ? root.margin : card.x + Metrics.mm(3.4)
        width: root.width - root.margin - x
        y: root.height - Metrics.mm(2.4) - height
        height: Math.max(implicitHeight, Metrics.deskKey)
        design: root.design
        area: root
    }

    // Enter and the pedal store the entry.
    function done() {
        fields.keepAndGoOn();
    }
    function back() {
        if (root.design.entering !== FormViewModel.Nothing)
            fields.stepBack();
        else
            leave();
    }
}
