pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The fields of a section. Fields that do not fit are reached by a key.
Item {
    id: root

    required property FormViewModel form
    // This is measured against the whole room, so that the keys shown on overflow do not affect the result.
    readonly property bool overflows: list.contentHeight > height - list.y + 1

    Words {
        id: heading
        width: parent.width
        text: root.form.sectionName
        font.bold: true
        font.pixelSize: Metrics.deskTitle
    }
    Words {
        id: wrong
        anchors.top: heading.bottom
        width: parent.width
        height: visible ? implicitHeight + Metrics.mm(1) : 0
        visible: text !== ""
        text: root.form.sectionProblem
        color: Theme.worked
        font.bold: true
        font.pixelSize: Metrics.deskLabel
    }
    ListView {
        id: list
        anchors.top: wrong.bottom
        anchors.topMargin: Metrics.mm(1)
        anchors.bottom: parent.bottom
        anchors.bottomMargin: root.overflows ? Metrics.deskKey + Metrics.mm(1.5) : 0
        width: parent.width
        clip: true
        model: root.form.fields
        spacing: Metrics.mm(1.5)
        boundsBehavior: Flickable.StopAtBounds

        delegate: FieldRow {
            width: list.width
            listed: root.visible
            onAsked: field => root.form.chooseField(field)
        }
    }
    Row {
        id: turn
        anchors.bottom: parent.bottom
        visible: root.overflows
        height: Metrics.deskKey
        spacing: Metrics.deskGap

        TouchKey {
            width: (root.width - Metrics.deskGap) / 2
            height: Metrics.deskKey
            legendSize: Metrics.deskText
            offers: ScreenAction {
                name: "fieldsUp"
                text: qsTr("Up")
                enabled: root.visible && root.overflows
                onTriggered: list.contentY = Math.max(list.originY, list.contentY - list.height * 0.8)
            }
        }
        TouchKey {
            width: (root.width - Metrics.deskGap) / 2
            height: Metrics.deskKey
            legendSize: Metrics.deskText
            offers: ScreenAction {
                name: "fieldsDown"
                text: qsTr("Down")
                enabled: root.visible && root.overflows
                onTriggered: list.contentY = Math.min(list.originY + list.contentHeight - list.height, list.contentY + list.height * 0.8)
            }
        }
    }
}
