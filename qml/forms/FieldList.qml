pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The fields of a section, each edited in its place: pad, answers or line open beneath the field in hand. Fields that do
// not fit are reached by a key.
Item {
    id: root

    required property FormViewModel form
    property bool headed: true
    property color ground: Theme.ground
    readonly property alias overflows: paged.overflows
    readonly property alias editor: editor

    function keepAndGoOn() {
        editor.keepAndGoOn();
    }
    function stepBack() {
        editor.stepBack();
    }

    Words {
        id: heading
        width: parent.width
        height: root.headed ? implicitHeight : 0
        visible: root.headed
        text: root.form.sectionName
        font.bold: true
        font.pixelSize: Metrics.deskTitle
    }
    Words {
        id: wrong
        anchors.top: heading.bottom
        width: parent.width
        height: visible ? implicitHeight + Metrics.mm(1) : 0
        visible: root.headed && text !== ""
        text: root.form.sectionProblem
        font.bold: true
        font.pixelSize: Metrics.deskLabel
    }
    PagedList {
        id: paged
        // The row of the field in hand.
        property FieldRow row: null

        function bringIntoView() {
            if (root.form.fieldIndex >= 0)
                list.positionViewAtIndex(root.form.fieldIndex, editor.height + Metrics.deskKey > list.height ? ListView.Beginning : ListView.Contain);
        }

        anchors.top: wrong.bottom
        anchors.topMargin: root.headed ? Metrics.mm(1) : 0
        anchors.bottom: parent.bottom
        // The frame of the box in hand reaches over its edges.
        x: -Metrics.mm(1)
        width: parent.width + Metrics.mm(2)
        name: "fields"
        ground: root.ground
        model: root.form.fields
        delegate: FieldRow {
            id: one
            x: Metrics.mm(1)
            width: root.width
            form: root.form
            listed: root.visible
            editorRoom: editor.height
            onAsked: field => {
                if (field === root.form.fieldIndex)
                    root.form.leaveField();
                else
                    root.form.chooseField(field);
            }
            onChosenChanged: {
                if (chosen)
                    paged.row = one;
            }
            Component.onCompleted: {
                if (chosen)
                    paged.row = one;
            }
        }

        FieldEditor {
            id: editor
            parent: paged.list.contentItem
            visible: root.visible && paged.row !== null && root.form.entering !== FormViewModel.Nothing
            x: Metrics.mm(1)
            y: paged.row !== null ? paged.row.y + paged.row.editorAt + Metrics.mm(1.6) : 0
            width: root.width
            height: visible ? implicitHeight : 0
            form: root.form
            onHeightChanged: Later.call(paged.bringIntoView)
        }
        Connections {
            target: root.form
            function onChanged() {
                Later.call(paged.settle);
            }
        }
        property int shown: -1
        // Of another field or section the list shows where it is; while one is edited it stays.
        function settle() {
            if (shown === root.form.fieldIndex)
                return;
            shown = root.form.fieldIndex;
            bringIntoView();
        }
    }
    Connections {
        target: root.form
        property string section: ""
        function onChanged() {
            if (section !== root.form.sectionName && root.form.fieldIndex < 0)
                paged.list.positionViewAtBeginning();
            section = root.form.sectionName;
        }
    }
}
