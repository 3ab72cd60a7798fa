import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One field being entered: a length on the pad, a choice among answers, or a line of text.
Item {
    id: root

    required property FormViewModel form
    readonly property bool onPad: form.entering === FormViewModel.Length || form.entering === FormViewModel.Number
    readonly property bool writes: form.entering === FormViewModel.Text
    readonly property bool chooses: form.entering === FormViewModel.Choice

    function keepAndGoOn() {
        if (writes ? form.keepText(line.text) : form.keep())
            goOn();
    }
    function goOn() {
        form.nextField();
        // Between two lines of text no other property changes.
        if (writes)
            line.begin(form.fieldValue);
    }

    // Backspace, or the pedal's Back, removes the last digit before it leaves the field.
    function stepBack() {
        if (onPad && form.keyed)
            form.erase();
        else
            form.leaveField();
    }

    onWritesChanged: writes ? line.begin(form.fieldValue) : line.leave()
    Component.onCompleted: {
        if (writes)
            line.begin(form.fieldValue);
    }

    Column {
        id: said
        width: parent.width
        spacing: Metrics.mm(1)

        Words {
            width: parent.width
            text: root.form.fieldLabel
            font.bold: true
            font.pixelSize: Metrics.deskTitle
        }
        Words {
            width: parent.width
            visible: root.onPad && root.form.fieldValue !== ""
            text: qsTr("now %1").arg(root.form.fieldValue)
            color: Theme.quiet
            font.pixelSize: Metrics.deskText
        }
        StackedNumber {
            visible: root.onPad
            wholeSize: Metrics.deskTitle * 1.6
            unitSize: Metrics.deskText
            whole: root.form.keyed ? root.form.whole : "…"
            fraction: root.form.fraction
            numerator: root.form.numerator
            denominator: root.form.denominator
            unit: root.form.unit
            ink: root.form.keyed ? Theme.worked : Theme.quiet
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
            text: root.form.refusal !== "" ? root.form.refusal : root.form.fieldProblem !== "" ? root.form.fieldProblem : root.form.fieldNote
            color: root.form.refusal + root.form.fieldProblem !== "" ? Theme.worked : Theme.quiet
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
        form: root.form
    }
    NumberPad {
        visible: root.onPad
        anchors.bottom: keys.top
        anchors.bottomMargin: Metrics.mm(3)
        anchors.horizontalCenter: parent.horizontalCenter
        spacing: Metrics.mm(2.5)
        keySize: Metrics.mm(14)
        legendSize: Metrics.deskTitle
        inches: root.form.inches
        onDigit: number => root.form.digit(number)
        onPart: root.form.part()
        onErased: root.form.erase()
    }
    // Each key has a fixed place, whichever others are shown.
    Item {
        id: keys
        anchors.bottom: parent.bottom
        width: parent.width
        height: Metrics.mm(12)
        readonly property double keyWidth: (root.width - 2 * Metrics.deskGap) / 3

        TouchKey {
            width: keys.keyWidth
            height: Metrics.mm(12)
            legendSize: Metrics.deskText
            offers: ScreenAction {
                name: "leaveField"
                text: qsTr("Back")
                enabled: root.visible
                onTriggered: root.form.leaveField()
            }
        }
        TouchKey {
            x: keys.keyWidth + Metrics.deskGap
            width: keys.keyWidth
            height: Metrics.mm(12)
            legendSize: Metrics.deskText
            offers: ScreenAction {
                name: "units"
                text: root.form.inches ? qsTr("In mm") : qsTr("In inches")
                enabled: root.visible && root.form.entering === FormViewModel.Length
                onTriggered: root.form.turnUnits()
            }
        }
        TouchKey {
            x: 2 * (keys.keyWidth + Metrics.deskGap)
            width: keys.keyWidth
            height: Metrics.mm(12)
            legendSize: Metrics.deskText
            offers: ScreenAction {
                name: "keepField"
                text: qsTr("Enter")
                filled: true
                enabled: root.visible && !root.chooses
                onTriggered: root.keepAndGoOn()
            }
        }
    }
}
