import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A measure as made, set on the scale it is read from: where on the piece it is taken, the planned value with its
// tolerance, what would come of each other value, and what follows from the one shown. Untouched it is as drawn.
CornerFrame {
    id: root

    required property MadeViewModel made
    required property WatchViewModel watch
    required property string piece
    readonly property bool asks: made.question !== ""
    // The measures this way of working asks for are over with this one.
    readonly property bool lastAsked: made.left === 0
    // What follows stands between the corners, or above them where there is no room.
    readonly property double footTop: height - Metrics.edge - Metrics.corner - (upright ? Metrics.gap + Metrics.mm(23) : 0)
    readonly property double keysTop: footTop - (upright ? Metrics.mm(3) : Metrics.gap) - Metrics.benchKey

    // The measuring is over.
    signal onwards
    signal digits

    function done() {
        if (lastAsked && !asks && made.finish())
            onwards();
    }
    // A press meant to go on says nothing of a measure: what was not set here is passed over, and not recorded as drawn.
    function goOn() {
        if (made.touched) {
            if (lastAsked)
                done();
            else
                next();
        } else if (lastAsked || !made.forward()) {
            onwards();
        }
    }
    function next() {
        if (made.next() && made.over())
            onwards();
    }

    shelfShown: false
    doneAction.enabled: lastAsked && !asks
    doneAction.by: ScreenAction.Nobody
    actions: [
        ScreenAction {
            id: less
            name: "less"
            text: "− " + root.made.readingText
            called: qsTr("Less")
            enabled: !root.asks
            repeats: true
            onTriggered: root.made.less()
        },
        ScreenAction {
            id: more
            name: "more"
            text: "+ " + root.made.readingText
            called: qsTr("More")
            enabled: !root.asks
            repeats: true
            onTriggered: root.made.more()
        },
        ScreenAction {
            id: digitsAction
            name: "digits"
            text: qsTr("Digits")
            enabled: !root.asks
            onTriggered: root.digits()
        },
        ScreenAction {
            id: nextAction
            name: "next"
            text: root.made.touched ? qsTr("Next") : qsTr("As drawn")
            enabled: !root.asks
            onTriggered: root.next()
        },
        ScreenAction {
            name: "goOn"
            text: root.made.touched ? qsTr("Next") : qsTr("Not measured")
            enabled: !root.asks
            place: ScreenAction.NoKey
            by: ScreenAction.Enter | ScreenAction.Forward
            onTriggered: root.goOn()
        },
        ScreenAction {
            id: newer
            name: "newer"
            text: root.made.newer
            enabled: root.asks
            onTriggered: root.made.answer(true)
        },
        ScreenAction {
            id: older
            name: "older"
            text: root.made.older
            enabled: root.asks
            onTriggered: root.made.answer(false)
        }
    ]

    PageHead {
        id: head
        width: root.width - 2 * parent.x
        watch: root.watch
        piece: root.piece
        note: root.made.place === "" ? "" : qsTr("no. %1").arg(root.made.place)
        title: root.made.title
        where: root.made.where
        thing: root.made.thing
        side: root.made.side
        backUp: root.made.backUp
    }
    Rectangle {
        id: plate
        objectName: "plate"
        x: -parent.x
        y: head.height + Metrics.mm(1.4)
        width: root.width
        height: root.keysTop - parent.y - Metrics.mm(1) - y
        color: Theme.cloth

        // Where on the piece it is taken.
        Rectangle {
            id: place
            visible: root.made.drawn && height > Metrics.mm(14)
            x: Metrics.mm(4)
            y: Metrics.mm(root.upright ? 2 : 4.5)
            width: root.upright ? parent.width - 2 * x : Metrics.mm(31)
            height: root.upright ? parent.height - measured.height - 2 * y : Math.min(Metrics.mm(31), parent.height - 2 * y)
            color: Theme.card

            PieceView {
                anchors.fill: parent
                anchors.margins: Metrics.mm(1)
                drawing: root.made.drawing
            }
        }
        Item {
            id: measured
            x: root.upright ? Metrics.mm(2) : place.visible ? place.x + place.width + Metrics.mm(5) : Metrics.mm(4)
            y: parent.height - height
            width: parent.width - x - Metrics.mm(root.upright ? 2 : 4)
            height: rule.height + number.height + number.clear

            Words {
                id: drawn
                objectName: "drawn"
                width: parent.width * 0.4 - Metrics.mm(3)
                anchors.bottom: rule.top
                anchors.bottomMargin: Metrics.mm(0.6)
                horizontalAlignment: Text.AlignRight
                text: root.made.drawnText
                color: Theme.quiet
                font.pixelSize: root.upright ? Metrics.label : Metrics.text
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
            StackedNumber {
                id: number
                objectName: "value"
                x: parent.width * 0.4
                // What lies below the digits may reach over the words of the bands; a fraction's lower digits may not.
                readonly property double clear: fraction ? Metrics.mm(0.6) : -Metrics.mm(1.5)
                y: rule.y - clear - height
                wholeSize: fraction ? Metrics.figureLeast : Metrics.figure
                whole: root.made.valueWhole
                numerator: root.made.valueNumerator
                denominator: root.made.valueDenominator
                unit: root.made.valueUnit
                ink: root.made.touched ? Theme.worked : Theme.quiet
            }
            RuleScale {
                id: rule
                objectName: "scale"
                y: parent.height - height
                width: parent.width
                ticks: root.made.ticks
                bands: root.made.bands
                drawnAt: root.made.drawnAt
                value: root.made.value
                reading: Math.max(root.made.reading, 1e-6)
                touched: root.made.touched
            }
        }
    }
    // Where two measures contradict each other: which is right.
    KeyRow {
        x: Metrics.edge - parent.x
        y: root.keysTop - parent.y
        width: root.width - 2 * Metrics.edge
        legendSize: root.upright ? Metrics.text : Metrics.title
        offered: root.asks ? [newer, older] : [less, more, digitsAction, nextAction]
    }
    MadeFoot {
        x: Metrics.edge + (root.upright ? 0 : Metrics.corner + Metrics.gap) - parent.x
        y: root.footTop - parent.y
        width: root.width - 2 * (x + parent.x)
        height: root.upright ? Metrics.mm(23) : Metrics.corner
        made: root.made
        shelf: root.shelf
    }
}
