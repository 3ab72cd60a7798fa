#pragma once
// The name under which this machine writes into a record. It is stored beside the record and not in it: a record that
// is copied to another machine is written there under that machine's name.
#include <QString>
#include <string>

#include "core/base/message.h"
#include "core/base/result.h"

namespace app::stores {

QString deviceFile(const QString& dataDirectory);

// Returns the name in the folder's file. Where there is none a new one is made and stored: `former`, which records of
// earlier versions held, or one that no machine has had. A record that was `made` just now always gets a new one:
// events were numbered under the old one that the new record does not hold. Errors: data.device-closed {path} where the
// file cannot be opened, data.device-newer {path} where a newer program wrote it, data.device-unreadable {path} where
// the file cannot be read or holds no name, data.device-unkept {path} where a new one cannot be written; a former one
// serves even so.
core::base::Result<std::string, core::base::Message> deviceOf(const QString& dataDirectory, const std::string& former,
                                                              bool made);

}  // namespace app::stores
