#include "app/raphe/Style.h"

#include <QApplication>
#include <QPalette>
#include <QStyleFactory>

namespace raphe {

Theme themeFor(Appearance appearance)
{
    if (appearance == Appearance::System) {
        const QPalette palette = QGuiApplication::palette();
        appearance = palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness()
            ? Appearance::Dark
            : Appearance::Light;
    }
    return appearance == Appearance::Dark ? Theme::night() : Theme::light();
}

void dress(QApplication &application, const Theme &theme)
{
    application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    application.setFont(typeface(10.5));
    const QColor field = theme.dark ? theme.panel.lighter(125) : QColor(Qt::white);
    const QColor edge = theme.dark ? QColor(0x4a, 0x52, 0x57) : QColor(0xcf, 0xc9, 0xbf);
    QPalette palette;
    palette.setColor(QPalette::Window, theme.panel);
    palette.setColor(QPalette::WindowText, theme.ink);
    palette.setColor(QPalette::Base, field);
    palette.setColor(QPalette::AlternateBase, theme.ground);
    palette.setColor(QPalette::Text, theme.ink);
    palette.setColor(QPalette::Button, field);
    palette.setColor(QPalette::ButtonText, theme.ink);
    palette.setColor(QPalette::PlaceholderText, theme.quiet);
    palette.setColor(QPalette::Highlight, theme.accent);
    palette.setColor(QPalette::HighlightedText, theme.dark ? theme.ground : QColor(Qt::white));
    palette.setColor(QPalette::ToolTipBase, theme.ink);
    palette.setColor(QPalette::ToolTipText, theme.ground);
    palette.setColor(QPalette::Mid, edge);
    palette.setColor(QPalette::Light, field);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        QColor faint = theme.quiet;
        faint.setAlphaF(0.55F);
        palette.setColor(QPalette::Disabled, role, faint);
    }
    QApplication::setPalette(palette);
    QPalette ticks = palette; // the style draws boxes and rings in a shade of the window's colour, too faint to be seen
    ticks.setColor(QPalette::Window, theme.quiet);
    for (const char *ticked : {"QCheckBox", "QRadioButton"})
        QApplication::setPalette(ticks, ticked);
    const QString sheet = QStringLiteral(
        "QPushButton, QToolButton { min-height: 24px; padding: 5px 12px; border: 1px solid %1; border-radius: 7px; background: "
        "%2; }"
        "QToolButton { padding: 5px 9px; } QToolButton[popupMode=\"1\"] { padding-right: 20px; }"
        "QToolButton::menu-button { border: 0; width: 18px; }"
        "QPushButton:default { border-color: %3; }"
        "QPushButton:hover, QToolButton:hover { border-color: %3; }"
        "QPushButton:focus, QToolButton:focus, QLineEdit:focus, QPlainTextEdit:focus, QListView:focus { border: 2px solid %3; }"
        "QPushButton:focus { padding: 4px 11px; } QToolButton:focus { padding: 4px 8px; }"
        "QPushButton:checked, QToolButton:checked { background: %3; color: %4; border-color: %3; }"
        "QPushButton:disabled, QToolButton:disabled { color: %5; }"
        "QLineEdit, QPlainTextEdit { border: 1px solid %1; border-radius: 7px; padding: 5px 8px; background: %2; }"
        "QListView, QTextBrowser { border: 1px solid %1; border-radius: 7px; background: %2; outline: 0; }"
        "QTextBrowser { padding: 4px 6px; } QTextBrowser:focus { border: 2px solid %3; padding: 3px 5px; }"
        "QTabBar::tab { min-height: 24px; padding: 5px 14px; border: 1px solid %1; border-radius: 7px; margin: 0 6px 4px 0; "
        "background: %2; }"
        "QTabBar::tab:selected { background: %3; color: %4; border-color: %3; } QTabWidget::pane { border: 0; }"
        "QTabBar::tab:focus { border: 2px solid %3; }"
        "QSplitter::handle { background: %6; } QToolBar { border: 0; spacing: 8px; padding: 6px 10px; background: %7; }"
        "QStatusBar { background: %7; } QStatusBar::item { border: 0; }"
        "QLabel[role=\"title\"] { font-size: 14pt; font-weight: 700; } QLabel[role=\"head\"] { font-weight: 700; }"
        "QLabel[role=\"quiet\"] { color: %8; }"
        "QToolTip { background: %9; color: %6; border: 0; padding: 4px 6px; }")
                              .arg(edge.name(), field.name(), theme.accent.name(),
                                  palette.color(QPalette::HighlightedText).name(),
                                  palette.color(QPalette::Disabled, QPalette::Text).name(QColor::HexArgb), theme.ground.name(),
                                  theme.panel.name(), theme.quiet.name(), theme.ink.name());
    const QString warning = QStringLiteral(
        "QLabel[role=\"warning\"] { color: %1; } QLineEdit[wrong=\"true\"] { border: 2px solid %1; }"
        "QLabel[chip] { border: 1px solid %2; border-radius: 7px; padding: 2px 8px; } QLabel[chip=\"read\"] { border-color: %3; }"
        "QLabel[chip=\"ask\"], QLabel[chip=\"mistake\"] { border: 2px solid %1; } QPushButton[chip] { padding: 2px 10px; }")
                                .arg(theme.tender.name(), edge.name(), theme.accent.name());
    application.setStyleSheet(sheet + warning);
}

} // namespace raphe
