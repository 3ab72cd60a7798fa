import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The settings of this tablet for its bench: how it is read and heard, and how the work is led. Of several ways the present
// one is sunk.
DeskFrame {
    id: root

    required property SettingsViewModel settings
    required property RoomViewModel room
    readonly property int columns: width < Metrics.mm(200) ? 2 : 3
    readonly property double gap: Metrics.mm(6)

    place: "settings"

    // The texts are not bound, so that an unfinished entry stays whatever else changes.
    Component.onCompleted: {
        settings.open();
        name.text = settings.maker;
        contact.text = settings.contact;
    }

    component SettingKey: TouchKey {
        width: Math.floor((parent.width - Metrics.deskGap) / 2)
        height: Metrics.deskKey
        legendSize: Metrics.deskText
        margin: 0
    }
    component Side: Column {
        spacing: Metrics.mm(6)
    }

    Flow {
        id: sides
        readonly property double column: Math.floor((width - (root.columns - 1) * root.gap) / root.columns)
        anchors.top: parent.top
        anchors.topMargin: Metrics.mm(2)
        width: parent.width
        spacing: root.gap

        Side {
            width: sides.column

            SettingRow {
                width: parent.width
                called: qsTr("Units")
                meaning: qsTr("A new piece is begun in these; each keeps its own.")

                SettingKey {
                    offers: ScreenAction {
                        name: "millimetres"
                        text: qsTr("mm")
                        chosen: !root.settings.inches
                        onTriggered: root.settings.setInches(false)
                    }
                }
                SettingKey {
                    offers: ScreenAction {
                        name: "inches"
                        text: qsTr("inches")
                        chosen: root.settings.inches
                        onTriggered: root.settings.setInches(true)
                    }
                }
            }
            SettingRow {
                width: parent.width
                called: qsTr("Letters for %1").arg(root.settings.distanceText)
                meaning: qsTr("From your eyes at the bench to the tablet: the bench's letters grow with it.")

                SettingKey {
                    offers: ScreenAction {
                        name: "nearer"
                        text: qsTr("Nearer")
                        onTriggered: root.settings.nearer()
                    }
                }
                SettingKey {
                    offers: ScreenAction {
                        name: "farther"
                        text: qsTr("Farther")
                        onTriggered: root.settings.farther()
                    }
                }
            }
            SettingRow {
                width: parent.width
                called: qsTr("Light")

                SettingKey {
                    offers: ScreenAction {
                        name: "byDay"
                        text: qsTr("By day")
                        chosen: !root.settings.lamp
                        onTriggered: {
                            if (root.settings.lamp)
                                root.settings.turnLamp();
                        }
                    }
                }
                SettingKey {
                    offers: ScreenAction {
                        name: "byLamp"
                        text: qsTr("By lamp")
                        chosen: root.settings.lamp
                        onTriggered: {
                            if (!root.settings.lamp)
                                root.settings.turnLamp();
                        }
                    }
                }
            }
        }
        Side {
            width: sides.column

            SettingRow {
                width: parent.width
                called: qsTr("Way of working")
                meaning: root.settings.brief ? qsTr("A stretch of a stage at a time.") : qsTr("Every act by itself.")

                SettingKey {
                    offers: ScreenAction {
                        name: "everyAct"
                        text: qsTr("Every act")
                        chosen: !root.settings.brief
                        onTriggered: {
                            if (root.settings.brief)
                                root.settings.turnWay();
                        }
                    }
                }
                SettingKey {
                    offers: ScreenAction {
                        name: "shortWay"
                        text: qsTr("Short way")
                        chosen: root.settings.brief
                        onTriggered: {
                            if (!root.settings.brief)
                                root.settings.turnWay();
                        }
                    }
                }
            }
            SettingRow {
                width: parent.width
                called: qsTr("Windows")
                meaning: root.settings.byBorders ? qsTr("By their four borders, for a cutter with a bar.") : qsTr("By marks from the marked corner, for a rule.")

                SettingKey {
                    offers: ScreenAction {
                        name: "byMarks"
                        text: qsTr("By marks")
                        chosen: !root.settings.byBorders
                        onTriggered: {
                            if (root.settings.byBorders)
                                root.settings.turnMarking();
                        }
                    }
                }
                SettingKey {
                    offers: ScreenAction {
                        name: "byBorders"
                        text: qsTr("By borders")
                        chosen: root.settings.byBorders
                        onTriggered: {
                            if (!root.settings.byBorders)
                                root.settings.turnMarking();
                        }
                    }
                }
            }
            SettingRow {
                width: parent.width
                called: qsTr("The room")
                meaning: root.room.temperature + ", " + root.room.humidity + " · " + root.room.basis

                SettingKey {
                    offers: ScreenAction {
                        name: "toRoom"
                        text: qsTr("Enter it")
                        onTriggered: root.asked("room")
                    }
                }
            }
        }
        Side {
            // On a tablet that stands it is below both others.
            width: root.columns < 3 ? sides.width : sides.column

            SettingRow {
                width: parent.width
                called: qsTr("Sound")
                grave: root.settings.sound !== ""
                meaning: root.settings.sound !== "" ? root.settings.sound : qsTr("The tone of an alert, once. Stand where you work.")

                SettingKey {
                    offers: ScreenAction {
                        name: "tryOut"
                        text: qsTr("Sound it")
                        onTriggered: root.settings.soundAsked()
                    }
                }
            }
            SettingRow {
                width: parent.width
                called: qsTr("Pedal")
                meaning: root.settings.presses === 0 ? qsTr("Press it now: it is counted here.") : root.settings.presses === 1 ? qsTr("Heard once.") : qsTr("Heard %1 times.").arg(root.settings.presses)
            }
            SettingRow {
                width: parent.width
                called: qsTr("Whose work it is")
                meaning: qsTr("Stands on the sheets that go with a piece.")

                TextEntry {
                    id: name
                    objectName: "maker"
                    width: parent.width
                    height: Metrics.deskKey
                    placeholder: qsTr("Name")
                    onAccepted: leave()
                    onOver: root.settings.nameMaker(name.text, contact.text)
                }
                TextEntry {
                    id: contact
                    objectName: "contact"
                    width: parent.width
                    height: Metrics.deskKey
                    placeholder: qsTr("Telephone, letter or web")
                    onAccepted: leave()
                    onOver: root.settings.nameMaker(name.text, contact.text)
                }
            }
        }
    }
    Words {
        anchors.bottom: parent.bottom
        width: parent.width
        visible: text !== ""
        text: root.settings.refusal
        color: Theme.worked
        font.bold: true
        font.pixelSize: Metrics.deskText
    }
}
