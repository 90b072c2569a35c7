#include "app/batch/DocumentTasks.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <iostream>

namespace raphe::batch {

Result<std::vector<DocumentTask>> documentTasks(
    const std::vector<std::string> &visits, const std::string &out, const std::string &ending)
{
    const QString to = QString::fromStdString(out);
    if (!QFileInfo(to).isDir()) {
        if (visits.size() == 1)
            return std::vector<DocumentTask>{{visits.front(), out}};
        return Error{ErrorCode::BadArgument, out.empty() ? "--out" : out, "several visits need a folder that exists"};
    }
    std::vector<DocumentTask> tasks;
    for (const std::string &visit : visits) {
        const QString name = QFileInfo(QString::fromStdString(visit)).completeBaseName() + QString::fromStdString(ending);
        const std::string file = QDir(to).filePath(name).toStdString();
        if (std::any_of(tasks.begin(), tasks.end(), [&](const DocumentTask &task) { return task.out == file; }))
            return Error{ErrorCode::BadArgument, visit, "another visit file given has the same name"};
        tasks.push_back({visit, file});
    }
    return tasks;
}

void tellProgress(const std::vector<DocumentTask> &tasks, std::size_t at)
{
    if (tasks.size() > 1)
        std::cerr << at + 1 << " of " << tasks.size() << ": " << tasks[at].out << std::endl;
}

} // namespace raphe::batch
