@echo off
rem Opens the window; a shop folder may be named. What the window keeps for itself lies in the home folder, nothing of it in the shop.
setlocal
set "here=%~dp0"
set "own=%USERPROFILE%\.cradlewright"
if defined CRADLEWRIGHT_HOME set "own=%CRADLEWRIGHT_HOME%"
for %%f in ("%here%plugins\org.eclipse.equinox.launcher_*.jar") do set "launcher=%%f"
start "" javaw -Xshare:auto %CRADLEWRIGHT_JAVA_OPTIONS% -Dfile.encoding=UTF-8 "-Dosgi.configuration.area=%own%\configuration" "-Dosgi.sharedConfiguration.area=%here%configuration" -Dosgi.configuration.cascaded=true "-Dosgi.instance.area.default=%own%\window" "-Dcradlewright.home=%here%." -jar "%launcher%" %*
