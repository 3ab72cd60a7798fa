import QtQuick
import QtQuick.Templates as T

// The screens one has come through. The first stays; each other one is made when it is entered and gone when it is left.
T.StackView {
    id: root

    // Of each screen: its name, its source, what it is given, and the one it stands on ("" for whichever one came from).
    required property list<QtObject> rows
    property var names: [rows[0].name]
    readonly property ScreenBase current: currentItem as ScreenBase
    readonly property string screen: names[names.length - 1]

    // Before anything else is asked of it.
    function begin() {
        push(rows[0].source, rows[0].given, T.StackView.Immediate);
    }
    function row(name: string): QtObject {
        for (let i = 0; i < rows.length; ++i) {
            if (rows[i].name === name)
                return rows[i];
        }
        throw new Error("No screen is called " + name);
    }
    // To a screen gone through already; or a new one, on the screens it stands on.
    function open(name: string) {
        if (names.includes(name)) {
            cutTo(name);
            return;
        }
        const entered = [row(name)];
        while (entered[0].on !== "" && !names.includes(entered[0].on))
            entered.unshift(row(entered[0].on));
        if (entered[0].on !== "")
            cutTo(entered[0].on);
        const items = [];
        for (const one of entered)
            items.push(one.source, one.given);
        push(items, T.StackView.Immediate);
        names = names.concat(entered.map(one => one.name));
    }
    function leave() {
        if (names.length > 1)
            cutTo(names[names.length - 2]);
    }
    // Leaves all that was entered after it.
    function cutTo(name: string) {
        const at = names.lastIndexOf(name);
        if (at + 1 === names.length)
            return;
        for (let i = at + 1; i < names.length; ++i)
            (get(i, T.StackView.DontLoad) as ScreenBase)?.closed();
        pop(get(at, T.StackView.ForceLoad), T.StackView.Immediate);
        names = names.slice(0, at + 1);
    }
}
