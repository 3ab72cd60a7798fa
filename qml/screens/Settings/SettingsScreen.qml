import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The settings of this tablet for its bench.
DeskFrame {
    id: root

    required property SettingsViewModel settings
    required property RoomViewModel room

    place: "settings"

    // The texts are not bound, so that an unfinished entry stays whatever else changes.
    Component.onCompleted: {
        settings.open();
        name.text = settings.maker;
        contact.text = settings.contact;
    }

    component SettingKey: TouchKey {
        width: Metrics.mm(30)
        height: Metrics.mm(11)
        legendSize: Metrics.deskText
    }

    Column {
        width: parent.width
        spacing: Metrics.mm(1)

        SettingRow {
            width: parent.width
            called: qsTr("Units")
            meaning: qsTr("What a new piece is begun in. Each piece keeps its own.")

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
            called: qsTr("Distance: %1").arg(root.settings.distanceText)
            meaning: qsTr("From your eyes at the bench to the tablet. The bench's letters grow with it.")

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
            called: qsTr("Way of working")
            meaning: (root.settings.brief ? qsTr("A stretch of a stage at a time.") : qsTr("Every act by itself.")) + " " + (root.settings.byBorders ? qsTr("Windows by their four borders, for a cutter with a bar.") : qsTr("Windows by marks from the marked corner, for a rule."))

            SettingKey {
                offers: ScreenAction {
                    name: "turnWay"
                    text: root.settings.brief ? qsTr("Every act") : qsTr("Short way")
                    onTriggered: root.settings.turnWay()
                }
            }
            SettingKey {
                offers: ScreenAction {
                    name: "turnMarking"
                    text: root.settings.byBorders ? qsTr("By marks") : qsTr("By borders")
                    onTriggered: root.settings.turnMarking()
                }
            }
        }
        SettingRow {
            width: parent.width
            called: qsTr("Light")
            meaning: root.settings.lamp ? qsTr("Dark, for work by lamp.") : qsTr("Light, for work by day.")

            SettingKey {
                offers: ScreenAction {
                    name: "turnLamp"
                    text: root.settings.lamp ? qsTr("By day") : qsTr("By lamp")
                    onTriggered: root.settings.turnLamp()
                }
            }
        }
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
        SettingRow {
            width: parent.width
            called: qsTr("Whose work it is")
            meaning: qsTr("Stands on the sheets that go with a piece.")

            TextEntry {
                id: name
                objectName: "maker"
                width: Metrics.mm(52)
                height: Metrics.mm(11)
                placeholder: qsTr("Name")
                onAccepted: leave()
                onOver: root.settings.nameMaker(name.text, contact.text)
            }
            TextEntry {
                id: contact
                objectName: "contact"
                width: Metrics.mm(60)
                height: Metrics.mm(11)
                placeholder: qsTr("Telephone, letter or web")
                onAccepted: leave()
                onOver: root.settings.nameMaker(name.text, contact.text)
            }
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.settings.refusal
            color: Theme.worked
            font.bold: true
            font.pixelSize: Metrics.deskText
        }
    }
}
