@echo off
rem SPDX-License-Identifier: EPL-2.0
rem Opens the Garboard window. Needs a Java runtime of version 21 or newer: JAVA_HOME, or the one on the path.
setlocal
set "here=%~dp0"
set "java=javaw.exe"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\javaw.exe"
where /q "%java%" 2>nul || if not exist "%java%" (
  echo Garboard needs Java 21 or newer: install it, or set JAVA_HOME to it.
  pause
  exit /b 70
)
for %%f in ("%here%plugins\org.eclipse.osgi_*.jar") do set "framework=%%f"
start "Garboard" "%java%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 --enable-native-access=ALL-UNNAMED -Djava.awt.headless=true ^
  -Dosgi.noShutdown=false "-Dosgi.install.area=%here%." "-Dosgi.configuration.area=%here%configuration" %GARBOARD_JAVA_OPTIONS% ^
  -cp "%framework%" org.eclipse.core.runtime.adaptor.EclipseStarter %*
