pragma ComponentBehavior: Bound

import QtQml
import Mountwright.Bench
import Mountwright.Cutting
import Mountwright.Design
import Mountwright.FarFace
import Mountwright.Jobs
import Mountwright.Made
import Mountwright.Number
import Mountwright.OffTime
import Mountwright.Pieces
import Mountwright.Record
import Mountwright.Room
import Mountwright.Settings
import Mountwright.Stock
import Mountwright.ViewModels
import Mountwright.Welcome

// Every screen, a row each: its name, what it is made of, and the screen it stands on, which is where Back leads; "" where
// that is whichever one came from.
QtObject {
    id: root

    required property Desk desk

    component Row: QtObject {
        required property string name
        property string on: "bench"
        default property Component component
    }

    readonly property list<QtObject> rows: [
        Row {
            name: "bench"
            on: ""
            BenchScreen {
                bench: root.desk.bench
                shelf: root.desk.shelf
                watch: root.desk.watch
                off: root.desk.off
            }
        },
        Row {
            name: "more"
            MorePage {
                bench: root.desk.bench
                shelf: root.desk.shelf
            }
        },
        Row {
            name: "checks"
            ChecksPage {
                bench: root.desk.bench
                shelf: root.desk.shelf
            }
        },
        Row {
            name: "look"
            LookPage {
                look: root.desk.bench.look
                shelf: root.desk.shelf
            }
        },
        Row {
            name: "faults"
            FaultsPage {
                bench: root.desk.bench
                shelf: root.desk.shelf
            }
        },
        Row {
            name: "mend"
            MendPage {
                bench: root.desk.bench
                shelf: root.desk.shelf
            }
        },
        Row {
            name: "number"
            NumberScreen {
                figure: root.desk.bench.figure
            }
        },
        Row {
            name: "far"
            FarFace {
                bench: root.desk.bench
                shelf: root.desk.shelf
            }
        },
        Row {
            name: "made"
            MadeArea {
                made: root.desk.made
                shelf: root.desk.shelf
            }
        },
        Row {
            name: "room"
            on: ""
            RoomScreen {
                room: root.desk.room
                shelf: root.desk.shelf
            }
        },
        Row {
            name: "off"
            OffTimeScreen {
                off: root.desk.off
                shelf: root.desk.shelf
            }
        },
        Row {
            name: "jobs"
            JobsScreen {
                jobs: root.desk.jobs
                settings: root.desk.settings
            }
        },
        Row {
            name: "job"
            on: "jobs"
            JobPage {
                jobs: root.desk.jobs
                shelf: root.desk.shelf
            }
        },
        Row {
            name: "cutting"
            on: ""
            CuttingScreen {
                cutting: root.desk.cutting
                shelf: root.desk.shelf
            }
        },
        Row {
            name: "pieces"
            PiecesScreen {
                pieces: root.desk.pieces
                design: root.desk.design
            }
        },
        Row {
            name: "piece"
            on: "pieces"
            PiecePage {
                pieces: root.desk.pieces
                renewal: root.desk.renewal
                design: root.desk.design
            }
        },
        Row {
            name: "renewal"
            on: "piece"
            RenewalPage {
                renewal: root.desk.renewal
            }
        },
        Row {
            name: "record"
            on: "piece"
            RecordScreen {
                record: root.desk.record
                camera: root.desk.camera
            }
        },
        Row {
            name: "design"
            on: "pieces"
            DesignScreen {
                design: root.desk.design
            }
        },
        Row {
            name: "stock"
            StockScreen {
                stock: root.desk.stock
            }
        },
        Row {
            name: "settings"
            SettingsScreen {
                settings: root.desk.settings
                room: root.desk.room
            }
        },
        Row {
            name: "welcome"
            WelcomeScreen {
                settings: root.desk.settings
                design: root.desk.design
            }
        }
    ]
}
