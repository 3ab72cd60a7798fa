pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The cutter's card: every number of the act on one drawing of the back, the one in hand large beside it. The pedals
// turn the numbers; before the first and after the last they leave the screen.
CornerFrame {
    id: root

    required property BenchViewModel bench
    required property SettingsViewModel settings
    readonly property FigureViewModel figure: root.bench.figure
    // The number's own screen goes on with the number shown here.
    property bool goesOn: false

    function done() {
        stepDone();
    }
    function closed() {
        if (!goesOn)
            figure.begin();
    }

    doneAction.by: ScreenAction.Enter
    // Done ends the act: it stands out once the last number was shown.
    doneAction.filled: figure.index === figure.total - 1
    backAction.by: ScreenAction.Nobody
    actions: [
        ScreenAction {
            name: "pedalBack"
            text: qsTr("The number before")
            place: ScreenAction.NoKey
            by: ScreenAction.Back
            onTriggered: {
                if (!root.figure.back())
                    root.back();
            }
        },
        ScreenAction {
            name: "pedalForward"
            text: qsTr("The next number")
            place: ScreenAction.NoKey
            by: ScreenAction.Forward
            onTriggered: {
                if (!root.figure.forward())
                    root.over();
            }
        },
        ScreenAction {
            name: "number"
            text: qsTr("Number")
            place: ScreenAction.AboveDone
            onTriggered: {
                root.goesOn = true;
                root.asked("number");
            }
        },
        ScreenAction {
            name: "earlier"
            text: qsTr("Earlier")
            place: ScreenAction.AboveDone
            onTriggered: root.figure.back()
        },
        ScreenAction {
            name: "next"
            text: qsTr("Next")
            hint: root.figure.place
            place: ScreenAction.AboveDone
            onTriggered: root.figure.forward()
        }
    ]

    Words {
        id: title
        objectName: "cardTitle"
        width: parent.width
        text: root.bench.title
        font.bold: true
    }
    Words {
        id: lies
        objectName: "cardLies"
        anchors.top: title.bottom
        width: parent.width
        text: root.bench.lies + " · " + root.figure.cardUnit
        color: Theme.quiet
        font.pixelSize: Metrics.label
    }
    CardView {
        id: card
        anchors.top: lies.bottom
        anchors.topMargin: Metrics.mm(2)
        width: root.upright ? parent.width : parent.width - panel.width - Metrics.mm(5)
        height: root.upright ? parent.height * 0.27 : parent.height - y
        figure: root.figure
    }
    FitPane {
        id: panel
        x: parent.width - width
        y: root.upright ? card.y + card.height + Metrics.mm(2) : card.y
        width: root.upright ? parent.width : Metrics.mm(77)
        height: foot.y - y - Metrics.mm(2)
        spacing: level === 0 ? Metrics.mm(2) : 0
        tightest: 2
        key: root.figure.label + root.figure.datum + root.figure.index

        Words {
            objectName: "what"
            width: parent.width
            text: root.figure.what
            font.bold: true
            font.pixelSize: panel.level < 2 ? Metrics.text : Metrics.label
        }
        Flow {
            width: parent.width
            spacing: Metrics.mm(3)

            StepNumber {
                id: number
                figure: root.figure
                wholeSize: panel.level < 1 ? Metrics.figure : Metrics.figureLeast
            }
            Words {
                height: number.height
                verticalAlignment: Text.AlignVCenter
                visible: text !== ""
                text: root.figure.twin
                color: Theme.quiet
                wrapMode: Text.NoWrap
            }
        }
        Words {
            objectName: "from"
            width: parent.width
            text: root.figure.datum
            font.pixelSize: panel.level < 1 ? Metrics.text : Metrics.label
        }
    }
    // What the cutter is set to has no place on the back; it stands beside the key that turns the way of marking.
    Item {
        id: foot
        x: panel.x
        y: parent.height - height
        width: panel.width
        height: Math.max(settingsList.height, way.visible ? way.height : 0)

        Column {
            id: settingsList
            anchors.bottom: parent.bottom
            width: parent.width - (way.visible ? foot.width - way.x + Metrics.mm(4) : 0)

            Repeater {
                model: root.figure.beside

                Item {
                    id: row
                    required property var modelData

                    width: settingsList.width
                    height: Math.max(called.height, value.height)

                    Words {
                        id: called
                        text: row.modelData.name
                        color: row.modelData.current ? Theme.ink : Theme.quiet
                        font.bold: row.modelData.current
                        font.pixelSize: Metrics.label
                        wrapMode: Text.NoWrap
                    }
                    Words {
                        id: value
                        anchors.right: parent.right
                        text: row.modelData.text
                        color: row.modelData.current ? Theme.worked : Theme.quiet
                        font.bold: row.modelData.current
                        font.pixelSize: Metrics.label
                        wrapMode: Text.NoWrap
                    }
                }
            }
        }
        BenchKey {
            id: way
            // As far from the keys above Done as these are from each other.
            anchors.right: parent.right
            anchors.rightMargin: Metrics.mm(2)
            anchors.bottom: parent.bottom
            width: Metrics.benchKey
            legendSize: Metrics.label
            visible: root.figure.byMarking
            offers: ScreenAction {
                name: "turnMarking"
                text: root.settings.byBorders ? qsTr("By marks") : qsTr("By borders")
                enabled: root.figure.byMarking
                onTriggered: root.settings.turnMarking()
            }
        }
    }
}
