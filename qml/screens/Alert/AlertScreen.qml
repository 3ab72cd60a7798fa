import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The whole screen: now, which piece, the act, until when it can be caught, the answers of the touch test. Nothing stands
// in the lower corners: a press meant for Back or Done does nothing.
ScreenBase {
    id: root

    required property AlertViewModel alert
    readonly property double distance: Metrics.farDistance
    readonly property bool upright: height > width
    // The artwork, then what of it.
    readonly property list<string> named: alert.piece.split(" · ")

    // Only an answer, or Heard, closes the alert.
    doneAction.enabled: false
    backAction.enabled: false

    Rectangle {
        anchors.fill: parent
        color: Theme.alertGround
    }
    FitPane {
        id: pane
        x: Metrics.mm(4)
        y: Metrics.mm(1)
        width: (later.visible || shortly.visible ? later.x - Metrics.gap : root.width - x) - x
        height: (bar.visible ? bar.y : heard.above) - y - Metrics.mm(3)
        tightest: 3
        spacing: level === 0 ? Metrics.mm(2) : 0
        key: root.alert.identity + root.alert.times + root.alert.gone + root.alert.others.length

        Flow {
            width: parent.width
            spacing: Metrics.mm(3)

            Words {
                objectName: "now"
                text: root.alert.now
                color: Theme.onAlert
                font.bold: true
                font.pixelSize: Metrics.farLabel
                lineHeight: 0.82
            }
            ArtworkName {
                width: Math.min(implicitWidth, parent.width)
                text: root.named[0]
                color: Theme.onAlert
                font.pixelSize: Metrics.farName
                lineHeight: 0.82
            }
            // Which board and which wait, as far as there is room: the wait tells most.
            Words {
                objectName: "rest"
                width: Math.min(implicitWidth, parent.width)
                visible: text !== "" && pane.level < 3
                text: pane.level === 0 ? root.named.slice(1).join(" · ") : root.alert.piece.split(" · ").pop().split(": ").pop()
                color: Theme.onAlert
                font.pixelSize: Metrics.farLabel
                lineHeight: 0.82
            }
        }
        Words {
            objectName: "act"
            width: parent.width
            text: root.alert.act
            color: Theme.onAlert
            font.pixelSize: pane.level === 0 ? Metrics.farText * 1.15 : pane.level < 3 ? Metrics.farText : Metrics.farLabel
            font.bold: true
            lineHeight: 0.82
        }
        Words {
            width: parent.width
            visible: text !== "" && pane.level < 3
            text: root.alert.test
            color: Theme.onAlert
            font.pixelSize: pane.level < 2 ? Metrics.farText : Metrics.farLabel
            lineHeight: 0.82
        }
        Words {
            objectName: "times"
            width: parent.width
            visible: text !== ""
            text: root.alert.times
            color: Theme.onAlert
            font.pixelSize: Metrics.farLabel
            lineHeight: 0.85
        }
        Words {
            objectName: "others"
            width: parent.width
            // Other alerts are named as far as there is room, the rest counted.
            readonly property int named: Math.min(pane.level === 0 ? 2 : pane.level === 1 ? 1 : 0, root.alert.others.length)
            readonly property int rest: root.alert.others.length - named
            readonly property string names: named === 0 ? "" : named === 1 ? root.alert.others[0] : root.alert.others[0] + "; " + root.alert.others[1]

            visible: root.alert.others.length > 0
            text: names === "" ? qsTr("and %1 more").arg(rest) : rest === 0 ? qsTr("Also: %1").arg(names) : qsTr("Also: %1; and %2 more").arg(names).arg(rest)
            color: Theme.onAlert
            font.pixelSize: Metrics.farLabel
            lineHeight: 0.85
        }
        Words {
            width: parent.width
            visible: text !== "" && pane.level === 0
            text: root.alert.why
            color: Theme.onAlert
            font.pixelSize: Metrics.farLabel
            lineHeight: 0.85
        }
    }
    AlertBar {
        id: bar
        alert: root.alert
        x: pane.x
        y: heard.above - Metrics.mm(3) - height
        width: pane.width
        height: implicitHeight
    }
    AlertKey {
        id: heard
        slot: 0
        offers: ScreenAction {
            name: "heard"
            text: qsTr("Heard")
            sign: "heard"
            by: ScreenAction.Heard
            onTriggered: root.alert.hear()
        }
    }
    AlertKey {
        id: notYet
        slot: 1
        offers: ScreenAction {
            name: "notYet"
            text: root.alert.notYetWord
            sign: "before"
            enabled: root.alert.canLook && text !== ""
            onTriggered: root.alert.notYet()
        }
    }
    AlertKey {
        slot: 2
        offers: ScreenAction {
            name: "affirm"
            text: root.alert.foundWord
            sign: "within"
            enabled: root.alert.canLook
            onTriggered: root.alert.ready()
        }
    }
    AlertKey {
        slot: 3
        offers: ScreenAction {
            name: "pastIt"
            text: root.alert.pastItWord
            sign: "past"
            enabled: root.alert.canLook && text !== ""
            onTriggered: root.alert.pastIt()
        }
    }
    // To put it off is no answer: these stand apart from them, at the right and above the corner.
    AlertKey {
        id: later
        slot: 5
        height: Metrics.key
        y: heard.above - Metrics.gap - height
        offers: ScreenAction {
            name: "later"
            text: qsTr("In 5 min")
            enabled: root.alert.later
            onTriggered: root.alert.tellLater()
        }
    }
    AlertKey {
        id: shortly
        slot: 5
        height: Metrics.key
        y: (later.visible ? later.y : heard.above) - Metrics.gap - height
        offers: ScreenAction {
            name: "shortly"
            text: qsTr("In 2 min")
            enabled: root.alert.shortly
            onTriggered: root.alert.tellShortly()
        }
    }
}
