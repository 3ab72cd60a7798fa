import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One job off the bench: its progress, and what else can be done with it. Done goes to the bench with it.
CornerFrame {
    id: root

    required property JobsModel jobs
    required property SettingsViewModel settings

    function done() {
        over();
    }

    actions: [
        ScreenAction {
            name: "cutting"
            text: qsTr("Cut sheets")
            place: ScreenAction.AboveDone
            onTriggered: root.asked("cutting")
        },
        // In which way the maker is led, on this tablet; one record, whichever it is.
        ScreenAction {
            name: "way"
            text: root.settings.brief ? qsTr("Every act") : qsTr("Short way")
            place: ScreenAction.AboveDone
            onTriggered: root.settings.turnWay()
        }
    ]

    Column {
        width: parent.width
        spacing: Metrics.mm(3)

        Words {
            width: parent.width
            text: root.jobs.chosenTitle
            font.bold: true
            font.pixelSize: Metrics.title
        }
        Words {
            width: parent.width
            text: root.jobs.chosenWhere
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.jobs.chosenRuns
            color: Theme.calm
        }
        Words {
            width: parent.width
            text: root.settings.brief ? qsTr("Led the short way: a stretch of a stage at a time.") : qsTr("Led act by act.")
        }
    }
    Words {
        anchors.bottom: parent.bottom
        width: parent.width
        text: qsTr("Done: on the bench with it.")
        color: Theme.quiet
        font.pixelSize: Metrics.label
    }
}
