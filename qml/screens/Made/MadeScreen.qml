import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A measure as made, keyed in. Done records the entry; without an entry it goes on.
CornerFrame {
    id: root

    required property MadeViewModel made
    readonly property bool asks: made.question !== ""
    shelfShown: !upright

    function pass() {
        if (!made.forward())
            onwards();
    }
    function done() {
        if (asks)
            return;
        if (!made.keyed)
            onwards();
        else if (made.keep() && made.over())
            onwards();
    }

    // The measuring is over, after the last figure or without an entry.
    signal onwards

    actions: [
        ScreenAction {
            name: "agrees"
            text: qsTr("As planned")
            enabled: !root.asks
            place: ScreenAction.AboveDone
            onTriggered: root.made.agrees()
        },
        ScreenAction {
            name: "pass"
            text: qsTr("Skip")
            enabled: !root.asks
            place: ScreenAction.AboveDone
            by: ScreenAction.Forward
            onTriggered: root.pass()
        },
        // While two measures contradict each other the glass asks which; the pedal leaves the question open.
        ScreenAction {
            name: "leaveOpen"
            text: qsTr("Skip")
            enabled: root.asks
            place: ScreenAction.NoKey
            by: ScreenAction.Forward
            onTriggered: root.pass()
        },
        ScreenAction {
            name: "units"
            text: root.made.inches ? qsTr("In mm") : qsTr("In inches")
            enabled: !root.asks
            place: ScreenAction.AboveDone
            onTriggered: root.made.turnUnits()
        }
    ]

    Column {
        id: said
        width: root.upright ? parent.width : pad.x - Metrics.mm(5)
        spacing: Metrics.mm(1.5)

        Words {
            width: parent.width
            text: root.made.label
            font.bold: true
        }
        Words {
            width: parent.width
            text: root.made.datum + (root.made.place === "" ? "" : " · " + root.made.place)
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
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
            visible: root.made.refusal === "" && !root.asks
            text: root.made.tolerance
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.asks ? root.made.question : root.made.refusal
            color: Theme.worked
            font.bold: true
            font.pixelSize: Metrics.label
        }
    }
    PieceView {
        anchors.top: said.bottom
        anchors.topMargin: Metrics.mm(2)
        anchors.bottom: root.upright ? pad.top : parent.bottom
        anchors.bottomMargin: root.upright ? Metrics.mm(2) : 0
        width: said.width
        visible: height > Metrics.mm(18)
        drawing: root.made.drawing
    }
    NumberPad {
        id: pad
        x: root.upright ? 0 : parent.width - width - Metrics.mm(2)
        y: root.upright ? parent.height - height : 0
        visible: !root.asks
        inches: root.made.inches
        onDigit: number => root.made.digit(number)
        onPart: root.made.part()
        onErased: root.made.erase()
    }
    Column {
        x: pad.x
        y: pad.y
        width: parent.width - x
        visible: root.asks
        spacing: Metrics.gap

        TouchKey {
            width: parent.width
            height: Metrics.benchKey * 1.4
            offers: ScreenAction {
                name: "newer"
                text: root.made.newer
                enabled: root.asks
                onTriggered: root.made.answer(true)
            }
        }
        TouchKey {
            width: parent.width
            height: Metrics.benchKey * 1.4
            offers: ScreenAction {
                name: "older"
                text: root.made.older
                enabled: root.asks
                onTriggered: root.made.answer(false)
            }
        }
        Words {
            width: parent.width
            text: qsTr("Back: measure again.")
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
}
