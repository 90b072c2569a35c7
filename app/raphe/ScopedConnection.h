// A connection that ends with the object that holds it as a member: before its base class goes, whose children may still send
// signals while they are taken down with it (a field that loses the focus).
#pragma once

#include <QObject>

namespace raphe {

class ScopedConnection {
public:
    explicit ScopedConnection(QMetaObject::Connection connection = {}) : m_connection(std::move(connection)) { }
    ~ScopedConnection() { QObject::disconnect(m_connection); }
    ScopedConnection(const ScopedConnection &) = delete;
    ScopedConnection &operator=(const ScopedConnection &) = delete;
    ScopedConnection &operator=(QMetaObject::Connection connection)
    {
        QObject::disconnect(m_connection);
        m_connection = std::move(connection);
        return *this;
    }

private:
    QMetaObject::Connection m_connection;
};

} // namespace raphe
