pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The jobs on this bench, two at a time, each as a key.
ScreenBase {
    id: root

    required property JobsModel jobs
    required property SettingsViewModel settings
    required property WatchViewModel watch

    function done() {
        over();
    }

    backAction.place: ScreenAction.Corner
    actions: [
        ScreenAction {
            name: "turn"
            text: qsTr("Page")
            enabled: root.jobs.pages > 1
            place: ScreenAction.Foot
            onTriggered: root.jobs.turnPage()
        },
        ScreenAction {
            name: "desk"
            text: qsTr("Desk")
            place: ScreenAction.Foot
            onTriggered: root.asked("pieces")
        },
        ScreenAction {
            name: "lamp"
            text: Theme.lamp ? qsTr("By day") : qsTr("By lamp")
            place: ScreenAction.Foot
            onTriggered: root.settings.turnLamp()
        }
    ]

    // On an upright tablet there is no room beside Back, so the keys are above it.
    readonly property bool upright: height > width
    readonly property double firstRow: now.y + now.height + Metrics.mm(1)
    readonly property double rowHeight: ((upright ? keys.y : back.y) - firstRow - 2 * Metrics.gap) / 2

    NowLine {
        id: now
        x: Metrics.mm(4)
        y: Metrics.edge
        width: root.width - 2 * x
        time: root.watch.time
        note: {
            const parts = [qsTr("on this bench"), root.jobs.place];
            return parts.filter(part => part !== "").join(", ");
        }
    }
    Words {
        visible: root.jobs.count === 0
        x: Metrics.mm(4)
        y: root.firstRow + (root.rowHeight - height) / 2
        width: root.width - 2 * x
        text: qsTr("No piece is on this bench yet. Begin one at the desk.")
        font.bold: true
        font.pixelSize: Metrics.act
    }
    Repeater {
        model: root.jobs

        JobKey {
            x: Metrics.edge
            y: root.firstRow + index * (root.rowHeight + Metrics.gap)
            width: root.width - 2 * x
            height: root.rowHeight
            onTaken: {
                root.jobs.choose(index);
                root.asked("job");
            }
        }
    }
    TouchKey {
        id: back
        x: Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        offers: root.backAction
    }
    Row {
        id: keys
        anchors.right: parent.right
        // The place of Done on other screens is empty here, so that a press out of habit has no effect.
        anchors.rightMargin: Metrics.edge + (root.upright ? 0 : Metrics.corner + Metrics.gap)
        y: root.upright ? back.y - height - Metrics.gap : back.y + (back.height - height) / 2
        spacing: Metrics.gap

        ActionKeys {
            area: root
            place: ScreenAction.Foot

            BenchKey {
                required property ScreenAction modelData

                offers: modelData
            }
        }
    }
}
