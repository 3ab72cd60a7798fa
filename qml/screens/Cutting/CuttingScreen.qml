pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A sheet cut up: the one to fetch, each cut with its fence, the offcuts to keep. Done goes on, Back goes back.
CornerFrame {
    id: root

    required property CuttingViewModel cutting
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
        ScreenAction {
            name: "keep"
            text: root.cutting.keeping ? qsTr("Keep none") : qsTr("Keep them")
            enabled: root.cutting.keeps
            place: ScreenAction.AboveDone
            onTriggered: root.cutting.turnKeeping()
        }
    ]

    PieceView {
        id: drawn
        objectName: "sheet"
        visible: root.cutting.page !== CuttingViewModel.Over
        width: parent.width * 0.48
        height: parent.height - caution.height
        drawing: root.cutting.drawing
    }
    FitPane {
        id: pane
        x: drawn.visible ? drawn.width + Metrics.mm(5) : 0
        width: parent.width - x
        height: parent.height - caution.height
        key: root.cutting.heading + root.cutting.said
        tightest: 2
        spacing: Metrics.mm(2)

        Words {
            width: parent.width
            text: root.cutting.heading
            font.bold: true
            font.pixelSize: Metrics.title
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.cutting.place
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
        StackedNumber {
            objectName: "fence"
            visible: root.cutting.page === CuttingViewModel.Cut
            whole: root.cutting.whole
            numerator: root.cutting.numerator
            denominator: root.cutting.denominator
            unit: root.cutting.unit
        }
        Repeater {
            model: root.cutting.lines

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
