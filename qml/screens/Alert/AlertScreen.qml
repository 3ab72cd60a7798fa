import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The whole screen: which piece, the act, the sure and the likely time, the answers of the touch test.
ScreenBase {
    id: root

    required property AlertViewModel alert
    readonly property double distance: Metrics.farDistance
    readonly property bool upright: height > width

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
        width: root.width - 2 * x
        height: notYet.y - y - Metrics.mm(3)
        tightest: 3
        spacing: level === 0 ? Metrics.mm(2) : 0
        key: root.alert.identity + root.alert.likely + root.alert.others.length

        Words {
            width: parent.width
            text: root.alert.piece
            color: Theme.onAlert
            font.pixelSize: Metrics.farLabel
            lineHeight: 0.82
        }
        Words {
            width: parent.width
            text: root.alert.act
            color: Theme.onAlert
            font.pixelSize: pane.level === 0 ? Metrics.farText * 1.15 : Metrics.farText
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
        Grid {
            width: parent.width
            columns: root.upright ? 1 : 2
            spacing: Metrics.mm(4)

            Rectangle {
                id: bar
                visible: root.alert.sure !== ""
                height: root.upright ? sure.implicitHeight : likely.implicitHeight
                width: sure.implicitWidth + Metrics.mm(8)
                color: Theme.onAlert

                Words {
                    id: sure
                    anchors.centerIn: parent
                    text: root.alert.sure
                    color: Theme.alertGround
                    font.pixelSize: Metrics.farLabel
                    font.bold: true
                    wrapMode: Text.NoWrap
                }
            }
            Words {
                id: likely
                width: parent.width - (bar.visible && !root.upright ? bar.width + parent.spacing : 0)
                text: root.alert.likely
                color: Theme.onAlert
                font.pixelSize: Metrics.farLabel
                lineHeight: 0.85
            }
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
    AlertKey {
        id: notYet
        slot: 0
        offers: ScreenAction {
            name: "notYet"
            text: root.alert.notYetWord
            enabled: root.alert.canLook && text !== ""
            onTriggered: root.alert.notYet()
        }
    }
    AlertKey {
        slot: 1
        offers: ScreenAction {
            name: "affirm"
            text: root.alert.foundWord
            filled: true
            enabled: root.alert.canLook
            onTriggered: root.alert.ready()
        }
    }
    AlertKey {
        slot: 2
        offers: ScreenAction {
            name: "pastIt"
            text: root.alert.pastItWord
            enabled: root.alert.canLook && text !== ""
            onTriggered: root.alert.pastIt()
        }
    }
    AlertKey {
        slot: 3
        offers: ScreenAction {
            name: "shortly"
            text: qsTr("In 2 min")
            enabled: root.alert.shortly
            onTriggered: root.alert.tellShortly()
        }
    }
    AlertKey {
        slot: 4
        offers: ScreenAction {
            name: "later"
            text: qsTr("In 5 min")
            enabled: root.alert.later
            onTriggered: root.alert.tellLater()
        }
    }
    AlertKey {
        slot: 5
        offers: ScreenAction {
            name: "heard"
            text: qsTr("Heard")
            by: ScreenAction.Heard
            onTriggered: root.alert.hear()
        }
    }
}
