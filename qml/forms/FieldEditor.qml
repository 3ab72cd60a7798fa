import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// How the field in hand is entered, right beneath it: on a pad, as a choice among answers, or as a line of text with what
// is at hand beneath it.
Item {
    id: root

    required property FormViewModel form
    readonly property bool onPad: form.entering === FormViewModel.Length || form.entering === FormViewModel.Number
    readonly property bool writes: form.entering === FormViewModel.Text
    readonly property bool chooses: form.entering === FormViewModel.Choice

    implicitHeight: column.implicitHeight

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
        id: column
        width: parent.width
        spacing: Metrics.deskGap

        TextEntry {
            id: line
            objectName: "line"
            visible: root.writes
            width: parent.width
            onAccepted: root.keepAndGoOn()
        }
        NumberPad {
            id: pad
            visible: root.onPad
            spacing: Metrics.deskGap
            keySize: Math.min((root.width - 2 * spacing) / 3, Metrics.mm(20))
            keyHeight: Metrics.deskKey
            legendSize: Metrics.deskTitle
            inches: root.form.inches
            onDigit: number => root.form.digit(number)
            onPart: root.form.part()
            onErased: root.form.erase()
        }
        // Each key has a fixed place, whichever others are shown.
        Item {
            id: keys
            visible: !root.chooses
            width: 3 * keyWidth + 2 * Metrics.deskGap
            height: Metrics.deskKey
            readonly property double keyWidth: pad.keySize

            TouchKey {
                width: keys.keyWidth
                height: Metrics.deskKey
                legendSize: Metrics.deskText
                offers: ScreenAction {
                    name: "leaveField"
                    // A piece has a back of its own.
                    text: qsTr("Close")
                    enabled: root.visible && !root.chooses
                    onTriggered: root.form.leaveField()
                }
            }
            TouchKey {
                x: keys.keyWidth + Metrics.deskGap
                width: keys.keyWidth
                height: Metrics.deskKey
                legendSize: Metrics.deskText
                offers: ScreenAction {
                    name: "units"
                    text: root.form.inches ? "mm" : "in"
                    called: root.form.inches ? qsTr("In mm") : qsTr("In inches")
                    enabled: root.visible && root.form.entering === FormViewModel.Length
                    onTriggered: root.form.turnUnits()
                }
            }
            TouchKey {
                x: 2 * (keys.keyWidth + Metrics.deskGap)
                width: keys.keyWidth
                height: Metrics.deskKey
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
        Words {
            width: parent.width
            visible: text !== ""
            text: root.form.refusal !== "" ? root.form.refusal : root.form.fieldProblem !== "" ? root.form.fieldProblem : root.form.fieldNote
            color: root.form.refusal + root.form.fieldProblem !== "" ? Theme.ink : Theme.quiet
            font.bold: root.form.refusal + root.form.fieldProblem !== ""
            font.pixelSize: Metrics.deskLabel
        }
        OptionList {
            visible: root.form.options.count > 0
            width: parent.width
            form: root.form
        }
    }
}
