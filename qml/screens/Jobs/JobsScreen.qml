pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The jobs on this bench, two at a time.
ScreenBase {
    id: root

    required property JobsModel jobs
    required property SettingsViewModel settings

    function done() {
        over();
    }

    // Upright there is no room beside Back: the keys stand above it.
    readonly property bool upright: height > width
    readonly property double rowHeight: ((upright ? keys.y : back.y) - Metrics.edge - 2 * Metrics.gap) / 2

    Words {
        visible: root.jobs.count === 0
        x: Metrics.mm(4)
        y: Metrics.mm(6)
        width: root.width - 2 * x
        text: qsTr("No job on this bench yet. Begin a piece at the desk.")
    }
    Repeater {
        model: root.jobs

        JobKey {
            objectName: "job" + index
            x: Metrics.edge
            y: Metrics.edge + index * (root.rowHeight + Metrics.gap)
            width: root.width - 2 * x
            height: root.rowHeight
            onActed: {
                root.jobs.choose(index);
                root.asked("job");
            }
        }
    }
    TouchKey {
        id: back
        objectName: "back"
        x: Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        legend: qsTr("Back")
        onActed: root.back()
    }
    Row {
        id: keys
        anchors.right: parent.right
        // Where Done stands on the other screens stands nothing: a knuckle in its rhythm changes nothing here.
        anchors.rightMargin: Metrics.edge + (root.upright ? 0 : Metrics.corner + Metrics.gap)
        y: root.upright ? back.y - height - Metrics.gap : back.y + (back.height - height) / 2
        spacing: Metrics.gap

        Words {
            anchors.verticalCenter: parent.verticalCenter
            visible: text !== ""
            text: root.jobs.place
            color: Theme.quiet
            font.pixelSize: Metrics.label
            wrapMode: Text.NoWrap
        }
        TouchKey {
            objectName: "turn"
            visible: root.jobs.pages > 1
            width: Metrics.corner
            height: Metrics.benchKey
            legend: qsTr("Turn")
            onActed: root.jobs.turnPage()
        }
        TouchKey {
            objectName: "desk"
            width: Metrics.corner
            height: Metrics.benchKey
            legend: qsTr("Desk")
            onActed: root.asked("pieces")
        }
        TouchKey {
            objectName: "lamp"
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.label
            legend: Theme.lamp ? qsTr("By day") : qsTr("By lamp")
            onActed: root.settings.turnLamp()
        }
    }
}
