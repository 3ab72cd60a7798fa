import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The whole screen: which piece, the act, how long is sure and how long likely, the answers of the touch test.
Rectangle {
    id: root

    required property AlertViewModel alert
    readonly property double distance: Metrics.farDistance
    readonly property double keyWidth: (width - 2 * Metrics.edge - 3 * Metrics.gap) / 4

    color: Theme.alertGround

    FitPane {
        id: pane
        x: Metrics.mm(4)
        y: Metrics.mm(1)
        width: root.width - 2 * x
        height: root.height - y - Metrics.corner - Metrics.edge - Metrics.mm(3)
        tightest: 3
        spacing: level === 0 ? Metrics.mm(2) : 0
        key: root.alert.identity + root.alert.likely

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
        Row {
            width: parent.width
            height: likely.implicitHeight
            spacing: Metrics.mm(4)

            Rectangle {
                id: bar
                visible: root.alert.sure !== ""
                height: parent.height
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
                width: parent.width - (bar.visible ? bar.width + parent.spacing : 0)
                text: root.alert.likely
                color: Theme.onAlert
                font.pixelSize: Metrics.farLabel
                lineHeight: 0.85
            }
        }
        Words {
            width: parent.width
            visible: text !== "" && pane.level < 2
            text: root.alert.why
            color: Theme.onAlert
            font.pixelSize: Metrics.farLabel
            lineHeight: 0.85
        }
    }
    TouchKey {
        objectName: "notYet"
        visible: root.alert.canLook
        x: Metrics.edge
        y: root.height - height - Metrics.edge
        width: root.keyWidth
        height: Metrics.corner
        ink: Theme.onAlert
        ground: Theme.alertGround
        legend: qsTr("Not yet")
        legendSize: Metrics.title
        onActed: root.alert.notYet()
    }
    TouchKey {
        objectName: "affirm"
        visible: root.alert.canLook
        x: Metrics.edge + root.keyWidth + Metrics.gap
        y: root.height - height - Metrics.edge
        width: root.keyWidth
        height: Metrics.corner
        filled: true
        ink: Theme.onAlert
        ground: Theme.alertGround
        legend: root.alert.window ? qsTr("Tacky") : qsTr("Dry")
        legendSize: Metrics.title
        onActed: root.alert.ready()
    }
    TouchKey {
        objectName: "pastIt"
        visible: root.alert.canLook && root.alert.window
        x: Metrics.edge + 2 * (root.keyWidth + Metrics.gap)
        y: root.height - height - Metrics.edge
        width: root.keyWidth
        height: Metrics.corner
        ink: Theme.onAlert
        ground: Theme.alertGround
        legend: qsTr("Past it")
        legendSize: Metrics.title
        onActed: root.alert.pastIt()
    }
    TouchKey {
        objectName: "heard"
        x: Metrics.edge + 3 * (root.keyWidth + Metrics.gap)
        y: root.height - height - Metrics.edge
        width: root.keyWidth
        height: Metrics.corner
        ink: Theme.onAlert
        ground: Theme.alertGround
        legend: qsTr("Heard")
        hint: root.alert.waiting > 0 ? qsTr("%1 more").arg(root.alert.waiting) : ""
        legendSize: Metrics.title
        onActed: root.alert.hear()
    }
}
