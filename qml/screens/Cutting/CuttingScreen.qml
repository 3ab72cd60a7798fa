pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Shapes
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A sheet cut up: the one to fetch with what lies on it, each cut with its dimension from the edge, the offcuts to keep.
// Done goes on, Back goes back.
CornerFrame {
    id: root

    required property CuttingViewModel cutting
    required property WatchViewModel watch
    readonly property bool isOver: cutting.page === CuttingViewModel.Over
    readonly property bool cuts: cutting.page === CuttingViewModel.Cut
    readonly property bool fetching: cutting.page === CuttingViewModel.Fetch

    function done() {
        if (!cutting.forward())
            leave();
    }
    function back() {
        if (!cutting.back())
            leave();
    }

    actions: [
        ScreenAction {
            name: "takeBack"
            text: qsTr("Not cut")
            hint: qsTr("last one")
            enabled: root.cutting.canTakeBack
            place: ScreenAction.AboveDone
            onTriggered: root.cutting.takeBack()
        },
        ScreenAction {
            name: "otherSheet"
            text: qsTr("Other sheet")
            enabled: root.fetching && root.cutting.sheets > 1
            place: ScreenAction.AboveDone
            onTriggered: root.cutting.otherSheet()
        },
        // What lacks may be more than a page.
        ScreenAction {
            name: "moreLines"
            text: qsTr("More")
            hint: qsTr("%1 of %2").arg(lacking.page + 1).arg(lacking.pages)
            enabled: root.isOver && lacking.pages > 1
            place: ScreenAction.AboveDone
            onTriggered: lacking.page = (lacking.page + 1) % lacking.pages
        },
        ScreenAction {
            name: "keep"
            text: root.cutting.keeping ? qsTr("Keep none") : qsTr("Keep them")
            enabled: root.cutting.keeps
            place: ScreenAction.AboveDone
            onTriggered: root.cutting.turnKeeping()
        }
    ]

    NowLine {
        id: now
        width: parent.width
        time: root.watch.time
        note: root.cutting.place
        piece: root.cutting.piece
    }
    Rectangle {
        id: plate
        // It bleeds off the left edge.
        x: -Metrics.mm(4)
        y: now.height + Metrics.mm(1.5)
        width: root.upright ? parent.width - x : Math.ceil(parent.width * 0.46) - x
        height: root.upright ? Math.ceil(parent.height * (root.fetching ? 0.28 : 0.4)) : parent.height - y - caution.height - (caution.shown ? Metrics.mm(2) : 0)
        visible: !root.isOver
        color: Theme.cloth
    }
    PieceView {
        id: drawn
        objectName: "sheet"
        x: Metrics.mm(1)
        y: plate.y + Metrics.mm(2)
        visible: plate.visible
        width: plate.x + plate.width - x - Metrics.mm(3)
        height: plate.height - Metrics.mm(4)
        drawing: root.cutting.drawing

        // The name of each piece at its place, where there is room for it.
        Repeater {
            model: root.fetching ? root.cutting.parts : []

            Words {
                required property var modelData
                readonly property rect on: {
                    // Where it lies follows the size it is drawn at.
                    const follows = drawn.width + drawn.height;
                    return follows > 0 ? drawn.placed(modelData.place) : Qt.rect(0, 0, 0, 0);
                }

                x: on.x
                y: on.y
                width: on.width
                height: on.height
                visible: implicitHeight <= height && longest.advanceWidth(text.split(" ").sort((a, b) => b.length - a.length)[0]) < width - Metrics.mm(2)
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
                text: modelData.name
                font.pixelSize: Metrics.label
            }
        }
    }
    FontMetrics {
        id: longest
        font.family: Metrics.family
        font.pixelSize: Metrics.label
    }
    // The figure stands beside its dimension, on a leader: the sheet is too small for it.
    Shape {
        // Below the sheet it stands under the act, and says from where.
        visible: root.cuts && !root.upright
        anchors.fill: parent

        ShapePath {
            id: leader
            readonly property rect on: {
                const follows = drawn.width + drawn.height;
                const at = root.cutting.fenceAt;
                return follows > 0 ? drawn.placed(Qt.rect(at.x, at.y, 0.01, 0.01)) : Qt.rect(0, 0, 0, 0);
            }
            readonly property double level: pane.y + fence.y + fence.height / 2
            readonly property double elbow: plate.x + plate.width + Metrics.mm(1)

            strokeColor: Theme.ink
            strokeWidth: 2 * Metrics.hairline
            fillColor: "transparent"
            PathPolyline {
                path: [Qt.point(leader.on.x + drawn.x, leader.on.y + drawn.y), Qt.point(leader.elbow, leader.level), Qt.point(pane.x - Metrics.mm(1), leader.level)]
            }
        }
    }
    FitPane {
        id: pane
        x: plate.visible && !root.upright ? plate.x + plate.width + Metrics.mm(5) : 0
        y: plate.visible && root.upright ? plate.y + plate.height + Metrics.mm(2) : now.height + Metrics.mm(1)
        width: parent.width - x
        height: parent.height - y - caution.height
        key: root.cutting.heading + root.cutting.said
        tightest: 2
        spacing: Metrics.mm(2)

        Words {
            id: head
            width: parent.width
            text: root.cutting.heading
            font.bold: true
            font.pixelSize: Metrics.title
        }
        StackedNumber {
            id: fence
            objectName: "fence"
            visible: root.cuts
            whole: root.cutting.whole
            numerator: root.cutting.numerator
            denominator: root.cutting.denominator
            unit: root.cutting.unit
        }
        Repeater {
            model: root.isOver ? [] : root.cutting.lines

            Words {
                required property string modelData
                width: pane.width
                text: modelData
                font.pixelSize: pane.level < 2 ? Metrics.text : Metrics.label
            }
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.cutting.refusal
            color: Theme.worked
            font.bold: true
        }
    }
    PagedText {
        id: lacking
        y: pane.y + head.height + Metrics.mm(4)
        width: parent.width
        height: parent.height - y
        visible: root.isOver
        spacing: Metrics.mm(1.5)
        // Less than a few lines are read at a glance.
        textSize: root.cutting.lines.length > 4 ? Metrics.label : Metrics.text
        paragraphs: root.isOver ? root.cutting.lines : []
    }
    CautionBox {
        id: caution
        y: parent.height - height
        width: parent.width
        shown: root.fetching
        sign: "W022"
        word: qsTr("WARNING")
        hazard: qsTr("blade")
        says: qsTr("Body and rule hand out of the blade's line; several light pulls.")
    }
}
