import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One field being entered: a length on the pad, a choice among answers, or a line of text.
Item {
    id: root

    required property DesignViewModel design
    readonly property bool onPad: design.entering === DesignViewModel.Length || design.entering === DesignViewModel.Number
    readonly property bool writes: design.entering === DesignViewModel.Text
    readonly property bool chooses: design.entering === DesignViewModel.Choice

    function keepAndGoOn() {
        if (writes ? design.keepText(line.text) : design.keep())
            design.nextField();
    }

    onWritesChanged: writes ? line.begin(design.fieldValue) : line.leave()

    Column {
        id: said
        width: parent.width
        spacing: Metrics.mm(1)

        Words {
            width: parent.width
            text: root.design.fieldLabel
            font.bold: true
            font.pixelSize: Metrics.deskTitle
        }
        Words {
            width: parent.width
            visible: root.onPad && root.design.fieldValue !== ""
            text: qsTr("now %1").arg(root.design.fieldValue)
            color: Theme.quiet
            font.pixelSize: Metrics.deskText
        }
        StackedNumber {
            visible: root.onPad
            wholeSize: Metrics.deskTitle * 1.6
            unitSize: Metrics.deskText
            whole: root.design.keyed ? root.design.whole : "…"
            fraction: root.design.fraction
            numerator: root.design.numerator
            denominator: root.design.denominator
            unit: root.design.unit
            ink: root.design.keyed ? Theme.worked : Theme.quiet
        }
        TextEntry {
            id: line
            objectName: "line"
            visible: root.writes
            width: parent.width
            onAccepted: root.keepAndGoOn()
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.design.refusal !== "" ? root.design.refusal : root.design.fieldProblem !== "" ? root.design.fieldProblem : root.design.fieldNote
            color: root.design.refusal + root.design.fieldProblem !== "" ? Theme.worked : Theme.quiet
            font.bold: color === Theme.worked
            font.pixelSize: Metrics.deskLabel
        }
    }
    OptionList {
        visible: root.chooses
        anchors.top: said.bottom
        anchors.topMargin: Metrics.mm(2)
        anchors.bottom: keys.top
        anchors.bottomMargin: Metrics.mm(2)
        width: parent.width
        design: root.design
    }
    NumberPad {
        visible: root.onPad
        anchors.bottom: keys.top
        anchors.bottomMargin: Metrics.mm(3)
        anchors.horizontalCenter: parent.horizontalCenter
        spacing: Metrics.mm(2.5)
        keySize: Metrics.mm(14)
        legendSize: Metrics.deskTitle
        inches: root.design.inches
        onDigit: number => root.design.digit(number)
        onPart: root.design.part()
        onErased: root.design.erase()
    }
    Row {
        id: keys
        anchors.bottom: parent.bottom
        spacing: Metrics.deskGap
        readonly property double keyWidth: (root.width - 2 * spacing) / 3

        TouchKey {
            objectName: "leaveField"
            width: keys.keyWidth
            height: Metrics.mm(12)
            legendSize: Metrics.deskText
            legend: qsTr("Back")
            onActed: root.design.leaveField()
        }
        TouchKey {
            objectName: "units"
            visible: root.design.entering === DesignViewModel.Length
            width: keys.keyWidth
            height: Metrics.mm(12)
            legendSize: Metrics.deskText
            legend: root.design.inches ? qsTr("In mm") : qsTr("In inches")
            onActed: root.design.turnUnits()
        }
        TouchKey {
            objectName: "keepField"
            visible: !root.chooses
            width: keys.keyWidth
            height: Metrics.mm(12)
            legendSize: Metrics.deskText
            legend: qsTr("Enter")
            filled: true
            onActed: root.keepAndGoOn()
        }
    }
}
