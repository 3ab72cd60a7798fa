import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A measure keyed in on the pad. Done records it; Back goes to the scale again.
CornerFrame {
    id: root

    required property MadeViewModel made
    required property WatchViewModel watch
    required property string piece
    shelfShown: !upright

    // The figure keyed in was recorded, or the measure was passed over.
    signal taken
    signal passed

    function done() {
        if (made.keyed && (made.keep() || made.question !== ""))
            taken();
    }

    doneAction.enabled: made.keyed
    actions: [
        ScreenAction {
            name: "units"
            text: root.made.inches ? qsTr("In mm") : qsTr("In inches")
            place: ScreenAction.AboveDone
            onTriggered: root.made.turnUnits()
        },
        ScreenAction {
            name: "pass"
            text: qsTr("Not measured")
            place: ScreenAction.AboveDone
            onTriggered: root.passed()
        }
    ]

    PageHead {
        id: head
        width: root.upright ? parent.width : pad.x - Metrics.mm(4)
        watch: root.watch
        note: root.made.place
        title: root.made.label
        titleSize: Metrics.text
        where: root.made.datum
    }
    Column {
        y: head.height + Metrics.mm(3)
        width: head.width
        spacing: Metrics.mm(1.5)

        StackedNumber {
            objectName: "keyed"
            whole: root.made.keyed ? root.made.whole : "…"
            fraction: root.made.fraction
            numerator: root.made.numerator
            denominator: root.made.denominator
            unit: root.made.unit
            ink: root.made.keyed ? Theme.worked : Theme.quiet
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.made.measured + (root.made.measured !== "" && root.made.difference !== "" ? " · " : "") + root.made.difference
            font.pixelSize: root.upright ? Metrics.label : Metrics.text
            color: Theme.worked
            font.bold: true
        }
        Words {
            width: parent.width
            text: root.made.computed
            font.pixelSize: root.upright ? Metrics.label : Metrics.text
        }
        Words {
            width: parent.width
            visible: root.made.refusal === ""
            text: root.made.tolerance
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.made.refusal
            color: Theme.worked
            font.bold: true
            font.pixelSize: Metrics.label
        }
    }
    NumberPad {
        id: pad
        x: root.upright ? 0 : parent.width - width - Metrics.mm(2)
        y: root.upright ? parent.height - height : 0
        inches: root.made.inches
        onDigit: number => root.made.digit(number)
        onPart: root.made.part()
        onErased: root.made.erase()
    }
}
