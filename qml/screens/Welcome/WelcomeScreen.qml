import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The first questions: units, distance, sound, where to begin. Each can be passed over and set again later.
ScreenBase {
    id: root

    required property SettingsViewModel settings
    required property DesignViewModel design
    property int page: 0
    readonly property int pages: 4

    backAction.text: page === 0 ? qsTr("Skip") : qsTr("Back")
    backAction.place: ScreenAction.Corner
    doneAction.enabled: page < pages - 1

    // One question, with the answers it accepts.
    component Page: Column {
        id: one

        required property int number
        property int shown: 0
        required property string question
        property string why: ""
        default property alias answers: keys.data

        visible: shown === number
        width: parent.width - 2 * x
        x: Metrics.mm(14)
        spacing: Metrics.mm(5)

        Words {
            width: one.width
            text: one.question
            font.bold: true
            font.pixelSize: Metrics.title
        }
        Words {
            width: one.width
            visible: text !== ""
            text: one.why
        }
        Row {
            id: keys
            spacing: Metrics.gap
        }
    }
    component Answer: TouchKey {
        width: Metrics.mm(48)
        height: Metrics.benchKey
    }

    Words {
        id: heading
        x: Metrics.mm(14)
        y: Metrics.mm(8)
        text: qsTr("Mountwright  ·  %1 of %2").arg(root.page + 1).arg(root.pages)
        color: Theme.quiet
    }
    Item {
        anchors.top: heading.bottom
        anchors.topMargin: Metrics.mm(10)
        anchors.bottom: passOver.top
        width: parent.width

        Page {
            number: 0
            shown: root.page
            question: qsTr("What do you measure in?")

            Answer {
                offers: ScreenAction {
                    name: "millimetres"
                    text: qsTr("Millimetres")
                    chosen: !root.settings.inches
                    enabled: root.page === 0
                    onTriggered: {
                        root.settings.setInches(false);
                        root.page = 1;
                    }
                }
            }
            Answer {
                offers: ScreenAction {
                    name: "inches"
                    text: qsTr("Inches")
                    chosen: root.settings.inches
                    enabled: root.page === 0
                    onTriggered: {
                        root.settings.setInches(true);
                        root.page = 1;
                    }
                }
            }
        }
        Page {
            number: 1
            shown: root.page
            question: qsTr("Stand at the bench. Can you read this with ease?")
            why: qsTr("Cut the window, 316.5 mm, along the steel rule. The tablet stands %1 from your eyes: letters grow with the distance.").arg(root.settings.distanceText)

            Answer {
                offers: ScreenAction {
                    name: "nearer"
                    text: qsTr("Smaller")
                    enabled: root.page === 1
                    onTriggered: root.settings.nearer()
                }
            }
            Answer {
                offers: ScreenAction {
                    name: "farther"
                    text: qsTr("Larger")
                    enabled: root.page === 1
                    onTriggered: root.settings.farther()
                }
            }
            Answer {
                offers: ScreenAction {
                    name: "readable"
                    text: qsTr("I can read it")
                    filled: true
                    enabled: root.page === 1
                    onTriggered: root.page = 2
                }
            }
        }
        Page {
            number: 2
            shown: root.page
            question: qsTr("Can you hear an alert from where you work?")
            why: root.settings.sound !== "" ? root.settings.sound : qsTr("Turn the tablet up, take headphones out, then sound it.")

            Answer {
                offers: ScreenAction {
                    name: "tryOut"
                    text: qsTr("Sound it")
                    enabled: root.page === 2 && root.settings.sound === ""
                    onTriggered: root.settings.soundAsked()
                }
            }
            Answer {
                offers: ScreenAction {
                    name: "hearsIt"
                    text: root.settings.sound !== "" ? qsTr("Go on") : qsTr("I hear it")
                    filled: true
                    enabled: root.page === 2
                    onTriggered: root.page = 3
                }
            }
        }
        Page {
            number: 3
            shown: root.page
            question: qsTr("Where shall we begin?")
            why: qsTr("The demo job is a chart under two boards, with a paper band and scattered leaf: every step can be tried on it. Nothing you do there is a real piece.")

            Answer {
                offers: ScreenAction {
                    name: "demo"
                    text: qsTr("The demo job")
                    filled: true
                    enabled: root.page === 3 && root.settings.hasDemo
                    onTriggered: {
                        if (root.settings.takeDemo()) {
                            root.settings.endIntroduction();
                            root.over();
                        }
                    }
                }
            }
            Answer {
                offers: ScreenAction {
                    name: "firstPiece"
                    text: qsTr("A piece of mine")
                    filled: !root.settings.hasDemo
                    enabled: root.page === 3
                    onTriggered: {
                        root.settings.endIntroduction();
                        if (root.design.beginFresh())
                            root.asked("design");
                    }
                }
            }
        }
    }
    Words {
        anchors.left: passOver.right
        anchors.leftMargin: Metrics.mm(6)
        anchors.right: parent.right
        anchors.rightMargin: Metrics.mm(6)
        anchors.verticalCenter: passOver.verticalCenter
        text: root.settings.refusal !== "" ? root.settings.refusal : qsTr("All of it can be set again: Jobs, then Desk, then This tablet.")
        color: root.settings.refusal !== "" ? Theme.worked : Theme.quiet
        font.pixelSize: Metrics.label
    }
    TouchKey {
        id: passOver
        x: Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        legendSize: Metrics.label
        offers: root.backAction
    }

    function back() {
        if (page > 0) {
            page -= 1;
        } else {
            settings.endIntroduction();
            over();
        }
    }
    // Enter and the pedal choose the answer that is offered.
    function done() {
        page += 1;
    }
}
