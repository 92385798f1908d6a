// The screens are all in the program, and what they show comes from a person's files: nothing of it
// is ever fetched from elsewhere.
#pragma once

class QQmlEngine;

namespace touch {

// From now on the engine takes up nothing but what lies in the program or, for Qt's own parts, in
// files of this machine; any other address is refused before a connection is tried.
void keep_off_the_network(QQmlEngine& engine);

}  // namespace touch
